/** Bundles cut across, at true scale. */
@NullMarked
package org.loomwright.drawing.bundle;

import org.jspecify.annotations.NullMarked;
