/** Charts: the protection chart of a lead, and bars against limits. */
@NullMarked
package org.loomwright.drawing.chart;

import org.jspecify.annotations.NullMarked;
