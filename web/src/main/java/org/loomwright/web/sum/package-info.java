/** Single sums as forms. */
@NullMarked
package org.loomwright.web.sum;

import org.jspecify.annotations.NullMarked;
