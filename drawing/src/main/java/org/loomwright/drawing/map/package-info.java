/** The run map: where the leads of a kit lie in the vehicle, and what they end in. */
@NullMarked
package org.loomwright.drawing.map;

import org.jspecify.annotations.NullMarked;
