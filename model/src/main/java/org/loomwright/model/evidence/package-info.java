/** How a fact is known. */
@NullMarked
package org.loomwright.model.evidence;

import org.jspecify.annotations.NullMarked;
