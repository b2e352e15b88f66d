/** Tests of what the papers say. */
@NullMarked
package org.loomwright.papers.words;

import org.jspecify.annotations.NullMarked;
