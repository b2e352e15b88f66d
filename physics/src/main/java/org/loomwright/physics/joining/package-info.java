/** Sums on terminals, rings and splices: current by wire and ambient, ranges, copper, stacking. */
@NullMarked
package org.loomwright.physics.joining;

import org.jspecify.annotations.NullMarked;
