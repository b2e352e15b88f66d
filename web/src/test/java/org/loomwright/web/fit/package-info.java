/** Tests of the fit check in a browser. */
@NullMarked
package org.loomwright.web.fit;

import org.jspecify.annotations.NullMarked;
