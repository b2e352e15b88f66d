/** Two edits of one JSON document brought together. */
@NullMarked
package org.loomwright.store.merge;

import org.jspecify.annotations.NullMarked;
