/** Forms in which a person edits any part of any document, driven by the records. */
@NullMarked
package org.loomwright.web.edit;

import org.jspecify.annotations.NullMarked;
