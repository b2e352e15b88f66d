/** Tests of the pictures. */
@NullMarked
package org.loomwright.drawing;

import org.jspecify.annotations.NullMarked;
