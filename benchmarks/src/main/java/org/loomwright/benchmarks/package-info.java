/** How fast the sums are, each beside a plain reference in the same run. */
@NullMarked
package org.loomwright.benchmarks;

import org.jspecify.annotations.NullMarked;
