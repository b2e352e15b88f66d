/** Tests of the build board on paper. */
@NullMarked
package org.loomwright.papers.board;

import org.jspecify.annotations.NullMarked;
