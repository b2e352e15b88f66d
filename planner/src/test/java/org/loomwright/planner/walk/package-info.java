@NullMarked
package org.loomwright.planner.walk;

import org.jspecify.annotations.NullMarked;
