/** Where a lead can end, and the parts an end is made with. */
@NullMarked
package org.loomwright.planner.landing;

import org.jspecify.annotations.NullMarked;
