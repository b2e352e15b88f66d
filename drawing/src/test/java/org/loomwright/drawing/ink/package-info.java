/** Tests of what pictures with words share, and the checks of text boxes. */
@NullMarked
package org.loomwright.drawing.ink;

import org.jspecify.annotations.NullMarked;
