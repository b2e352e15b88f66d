/** The fit check as one page for customers. */
@NullMarked
package org.loomwright.papers.fit;

import org.jspecify.annotations.NullMarked;
