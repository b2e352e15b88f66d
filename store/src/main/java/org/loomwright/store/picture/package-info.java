/** Pictures taken in without what a camera adds to them. */
@NullMarked
package org.loomwright.store.picture;

import org.jspecify.annotations.NullMarked;
