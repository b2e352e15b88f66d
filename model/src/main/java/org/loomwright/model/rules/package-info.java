/** The shop's limits, allowances and prices, each with its source. */
@NullMarked
package org.loomwright.model.rules;

import org.jspecify.annotations.NullMarked;
