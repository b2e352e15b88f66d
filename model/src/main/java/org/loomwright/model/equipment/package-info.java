/** The thing to be fitted: plugs, pins and what each pin needs. */
@NullMarked
package org.loomwright.model.equipment;

import org.jspecify.annotations.NullMarked;
