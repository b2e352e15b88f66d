/** What comes back from a one-file guide, held against the guide it was made from. */
@NullMarked
package org.loomwright.model.hand;

import org.jspecify.annotations.NullMarked;
