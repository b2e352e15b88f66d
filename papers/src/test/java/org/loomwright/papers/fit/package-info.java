/** Tests of the fit check page. */
@NullMarked
package org.loomwright.papers.fit;

import org.jspecify.annotations.NullMarked;
