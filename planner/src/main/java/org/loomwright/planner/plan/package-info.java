/** The whole way from an order to a plan. */
@NullMarked
package org.loomwright.planner.plan;

import org.jspecify.annotations.NullMarked;
