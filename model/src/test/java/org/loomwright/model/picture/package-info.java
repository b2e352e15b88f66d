/** Tests of pictures and of the sums on them. */
@NullMarked
package org.loomwright.model.picture;

import org.jspecify.annotations.NullMarked;
