/** What a change did to a kit, in words. */
@NullMarked
package org.loomwright.planner.difference;

import org.jspecify.annotations.NullMarked;
