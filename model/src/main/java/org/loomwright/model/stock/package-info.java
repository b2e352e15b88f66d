/** Kits that were made and lie on the shelf, were sold or were fitted. */
@NullMarked
package org.loomwright.model.stock;

import org.jspecify.annotations.NullMarked;
