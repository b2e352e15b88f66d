/** Tests of what a vehicle says of itself. */
@NullMarked
package org.loomwright.model.vehicle;

import org.jspecify.annotations.NullMarked;
