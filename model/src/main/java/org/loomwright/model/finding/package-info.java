/** What was seen on a real vehicle that the records did not say. */
@NullMarked
package org.loomwright.model.finding;

import org.jspecify.annotations.NullMarked;
