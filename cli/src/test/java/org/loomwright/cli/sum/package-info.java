/** Tests of the single sums against published figures. */
@NullMarked
package org.loomwright.cli.sum;

import org.jspecify.annotations.NullMarked;
