/** Tests of the papers. */
@NullMarked
package org.loomwright.papers;

import org.jspecify.annotations.NullMarked;
