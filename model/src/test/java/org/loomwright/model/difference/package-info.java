/** Tests of differences in words. */
@NullMarked
package org.loomwright.model.difference;

import org.jspecify.annotations.NullMarked;
