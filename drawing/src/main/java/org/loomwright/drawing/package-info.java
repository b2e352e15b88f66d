/** Pictures as SVG from pure functions: connector faces. */
@NullMarked
package org.loomwright.drawing;

import org.jspecify.annotations.NullMarked;
