/** A folder of documents read as one, with all that is wrong found in one go. */
@NullMarked
package org.loomwright.model.workspace;

import org.jspecify.annotations.NullMarked;
