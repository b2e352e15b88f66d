/** Wire colours as plain words and as letter codes. */
@NullMarked
package org.loomwright.model.colour;

import org.jspecify.annotations.NullMarked;
