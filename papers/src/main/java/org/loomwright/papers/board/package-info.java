/** The build board on paper, at true size. */
@NullMarked
package org.loomwright.papers.board;

import org.jspecify.annotations.NullMarked;
