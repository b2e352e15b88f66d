/** Tests of the circuit strip. */
@NullMarked
package org.loomwright.drawing.strip;

import org.jspecify.annotations.NullMarked;
