/** Pictures as cameras write them. */
@NullMarked
package org.loomwright.store.picture;

import org.jspecify.annotations.NullMarked;
