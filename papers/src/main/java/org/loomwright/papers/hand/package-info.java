/** The guide as one file for the hand: everything inside, for a phone without a network. */
@NullMarked
package org.loomwright.papers.hand;

import org.jspecify.annotations.NullMarked;
