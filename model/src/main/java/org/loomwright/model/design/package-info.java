/** A designed kit: leads, cases, checks, guide and proof, as data that papers and proof read. */
@NullMarked
package org.loomwright.model.design;

import org.jspecify.annotations.NullMarked;
