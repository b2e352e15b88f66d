/** What the pages show: the workspace as read, and its kits as planned. */
@NullMarked
package org.loomwright.web.shop;

import org.jspecify.annotations.NullMarked;
