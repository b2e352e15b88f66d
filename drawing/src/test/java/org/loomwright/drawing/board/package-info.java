@NullMarked
package org.loomwright.drawing.board;

import org.jspecify.annotations.NullMarked;
