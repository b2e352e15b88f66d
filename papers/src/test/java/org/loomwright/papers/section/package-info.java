/** Tests of the pictures in the papers' sections. */
@NullMarked
package org.loomwright.papers.section;

import org.jspecify.annotations.NullMarked;
