/** Tests of the store on every database it can be kept in. */
@NullMarked
package org.loomwright.store;

import org.jspecify.annotations.NullMarked;
