/** Per group of builds the cheapest set of ways. */
@NullMarked
package org.loomwright.planner.choice;

import org.jspecify.annotations.NullMarked;
