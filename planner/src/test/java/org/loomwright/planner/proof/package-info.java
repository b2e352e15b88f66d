/** Tests of the proof: good kits, planted faults, and brute force over builds as the oracle. */
@NullMarked
package org.loomwright.planner.proof;

import org.jspecify.annotations.NullMarked;
