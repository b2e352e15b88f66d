/**
 * Quantities as people write them: read by a strict reader that leaves nothing over, kept as
 * written, and held as JSR 385 quantities.
 */
@NullMarked
package org.loomwright.model.quantity;

import org.jspecify.annotations.NullMarked;
