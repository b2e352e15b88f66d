/** What a customer can find out before the vehicle is opened: does the kit fit, and which. */
@NullMarked
package org.loomwright.planner.fit;

import org.jspecify.annotations.NullMarked;
