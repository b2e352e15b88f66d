/** Documents read from JSON with all faults found in one go, written back, and their schemas. */
@NullMarked
package org.loomwright.model.json;

import org.jspecify.annotations.NullMarked;
