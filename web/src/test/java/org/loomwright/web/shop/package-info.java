@NullMarked
package org.loomwright.web.shop;

import org.jspecify.annotations.NullMarked;
