/** What the papers say: figures, names, bench lines and cautions, before any layout. */
@NullMarked
package org.loomwright.papers.words;

import org.jspecify.annotations.NullMarked;
