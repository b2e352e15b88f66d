/** The circuit strip: one circuit from its source to its load and back. */
@NullMarked
package org.loomwright.drawing.strip;

import org.jspecify.annotations.NullMarked;
