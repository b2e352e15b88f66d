/** The sections of the printed pack, one class each. */
@NullMarked
package org.loomwright.papers.section;

import org.jspecify.annotations.NullMarked;
