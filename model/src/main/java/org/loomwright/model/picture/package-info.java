/** Pictures that lie beside the documents, and the sums that place a drawing on a photo. */
@NullMarked
package org.loomwright.model.picture;

import org.jspecify.annotations.NullMarked;
