/** The guide as one vehicle meets it: the way its answers lead, and what they imply. */
@NullMarked
package org.loomwright.planner.walk;

import org.jspecify.annotations.NullMarked;
