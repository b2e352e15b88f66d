/** Paths over the vehicle's runs. */
@NullMarked
package org.loomwright.planner.route;

import org.jspecify.annotations.NullMarked;
