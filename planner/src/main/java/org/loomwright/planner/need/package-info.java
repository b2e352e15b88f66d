/** The needs of a kit and what each build already has. */
@NullMarked
package org.loomwright.planner.need;

import org.jspecify.annotations.NullMarked;
