/** Tests of the charts. */
@NullMarked
package org.loomwright.drawing.chart;

import org.jspecify.annotations.NullMarked;
