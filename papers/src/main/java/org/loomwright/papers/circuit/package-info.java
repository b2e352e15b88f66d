/** The circuits of a kit from source to load and back, read from its solved networks. */
@NullMarked
package org.loomwright.papers.circuit;

import org.jspecify.annotations.NullMarked;
