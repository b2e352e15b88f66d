/**
 * The proof: walks every possible build through the guide and says what can't be shown.
 *
 * <p>Shares nothing with the planner but the model and the sums, so that a mistake of the planner
 * can't hide itself. Sets of builds are decision diagrams over traits, never lists of builds.
 */
@NullMarked
package org.loomwright.planner.proof;

import org.jspecify.annotations.NullMarked;
