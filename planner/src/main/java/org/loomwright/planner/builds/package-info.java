/** Sets of builds as decision diagrams: never a list of builds. */
@NullMarked
package org.loomwright.planner.builds;

import org.jspecify.annotations.NullMarked;
