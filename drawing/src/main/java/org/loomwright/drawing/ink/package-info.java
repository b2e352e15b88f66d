/** What pictures with words share: boxes of text, lines cut to a frame, hatching, placed labels. */
@NullMarked
package org.loomwright.drawing.ink;

import org.jspecify.annotations.NullMarked;
