@NullMarked
package org.loomwright.papers.calculation;

import org.jspecify.annotations.NullMarked;
