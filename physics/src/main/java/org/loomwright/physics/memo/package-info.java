/** Remembering what has been worked out. */
@NullMarked
package org.loomwright.physics.memo;

import org.jspecify.annotations.NullMarked;
