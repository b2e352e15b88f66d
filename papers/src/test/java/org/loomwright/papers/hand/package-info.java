/** Tests of the one-file guide as text. */
@NullMarked
package org.loomwright.papers.hand;

import org.jspecify.annotations.NullMarked;
