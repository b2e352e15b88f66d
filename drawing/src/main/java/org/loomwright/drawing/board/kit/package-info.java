/**
 * The build board of a kit: the harness of a plan as trees for the board, with faces, tables, marks
 * and splices, laid out and checked against the list of leads.
 */
@NullMarked
package org.loomwright.drawing.board.kit;

import org.jspecify.annotations.NullMarked;
