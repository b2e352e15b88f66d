/** Tests of the fit check. */
@NullMarked
package org.loomwright.planner.fit;

import org.jspecify.annotations.NullMarked;
