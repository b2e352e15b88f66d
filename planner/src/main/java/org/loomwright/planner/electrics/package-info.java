/** A case as a DC network: factory wiring and added leads, loads, drops, currents, findings. */
@NullMarked
package org.loomwright.planner.electrics;

import org.jspecify.annotations.NullMarked;
