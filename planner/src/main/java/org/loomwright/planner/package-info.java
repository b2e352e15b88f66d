/** Builds, gap, ways, choice, kit, sizing, guide and proof. */
@NullMarked
package org.loomwright.planner;

import org.jspecify.annotations.NullMarked;
