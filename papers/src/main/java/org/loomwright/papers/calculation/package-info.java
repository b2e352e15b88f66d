/** The calculation report: each figure of the checks with the lines it follows from. */
@NullMarked
package org.loomwright.papers.calculation;

import org.jspecify.annotations.NullMarked;
