/** Properties of the merge. */
@NullMarked
package org.loomwright.store.merge;

import org.jspecify.annotations.NullMarked;
