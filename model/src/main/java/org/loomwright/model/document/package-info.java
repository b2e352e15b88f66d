/** The documents of a workspace and what they have in common. */
@NullMarked
package org.loomwright.model.document;

import org.jspecify.annotations.NullMarked;
