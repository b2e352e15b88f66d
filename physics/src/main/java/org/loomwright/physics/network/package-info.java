/**
 * Direct-current networks: node voltages and branch currents by nodal analysis, with no idea of
 * vehicles.
 *
 * <p>Sign convention, the same for every element: the current is positive when it flows through the
 * element from its first node ({@code from}) to its second ({@code to}), and the voltage is that of
 * {@code from} against {@code to}. A source runs from its negative to its positive terminal, so it
 * delivers when its current is positive.
 */
@NullMarked
package org.loomwright.physics.network;

import org.jspecify.annotations.NullMarked;
