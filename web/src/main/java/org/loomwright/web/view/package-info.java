/** What single pages are made from. */
@NullMarked
package org.loomwright.web.view;

import org.jspecify.annotations.NullMarked;
