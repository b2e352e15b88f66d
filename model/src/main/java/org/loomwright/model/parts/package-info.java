/** The parts the shop can buy and what each can bear, with the source of every value. */
@NullMarked
package org.loomwright.model.parts;

import org.jspecify.annotations.NullMarked;
