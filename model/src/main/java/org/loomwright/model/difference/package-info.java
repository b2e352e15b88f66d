/** What was changed between two revisions of a document, in words. */
@NullMarked
package org.loomwright.model.difference;

import org.jspecify.annotations.NullMarked;
