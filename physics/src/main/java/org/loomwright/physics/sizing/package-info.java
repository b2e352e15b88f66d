/** Choice of fuses and gauges from the sums of the other packages. */
@NullMarked
package org.loomwright.physics.sizing;

import org.jspecify.annotations.NullMarked;
