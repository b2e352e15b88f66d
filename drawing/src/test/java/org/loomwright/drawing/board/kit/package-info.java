/** Tests of the boards of kits. */
@org.jspecify.annotations.NullMarked
package org.loomwright.drawing.board.kit;
