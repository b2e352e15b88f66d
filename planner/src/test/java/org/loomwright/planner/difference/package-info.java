/** Tests of what is said of a change. */
@NullMarked
package org.loomwright.planner.difference;

import org.jspecify.annotations.NullMarked;
