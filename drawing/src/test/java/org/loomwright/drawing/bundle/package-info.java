/** Tests of bundles cut across. */
@NullMarked
package org.loomwright.drawing.bundle;

import org.jspecify.annotations.NullMarked;
