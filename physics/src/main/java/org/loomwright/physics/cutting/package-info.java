/** Pieces cut from spools or bars of one length with the least waste. */
@NullMarked
package org.loomwright.physics.cutting;

import org.jspecify.annotations.NullMarked;
