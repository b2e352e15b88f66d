/**
 * What is ordered from the planner: which equipment goes where on which vehicle, and the user's
 * wishes.
 */
@NullMarked
package org.loomwright.model.kit;

import org.jspecify.annotations.NullMarked;
