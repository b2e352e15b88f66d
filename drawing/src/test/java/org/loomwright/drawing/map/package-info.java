/** Tests of the run map. */
@NullMarked
package org.loomwright.drawing.map;

import org.jspecify.annotations.NullMarked;
