/** Tests of the sums and readings of the map. */
@NullMarked
package org.loomwright.web.map;

import org.jspecify.annotations.NullMarked;
