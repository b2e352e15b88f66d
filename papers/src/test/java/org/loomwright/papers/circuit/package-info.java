/** Tests of the circuits read from solved networks. */
@NullMarked
package org.loomwright.papers.circuit;

import org.jspecify.annotations.NullMarked;
