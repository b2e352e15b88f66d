/**
 * The build board: a harness laid flat at true length on a board of given size.
 *
 * <p>{@link org.loomwright.drawing.board.BoardLayout} turns a {@link
 * org.loomwright.drawing.board.BoardTree} into a {@link org.loomwright.drawing.board.BoardPlan},
 * {@link org.loomwright.drawing.board.BoardChecker} checks a plan without using the layout's code,
 * and the plan is written as SVG, as tiles for small paper, and as DXF. All coordinates are
 * millimetres from the upper left corner of the board, x to the right and y down.
 */
@NullMarked
package org.loomwright.drawing.board;

import org.jspecify.annotations.NullMarked;
