/** The one-file guide in a browser: from a file, without a network, on the width of a phone. */
@NullMarked
package org.loomwright.web.hand;

import org.jspecify.annotations.NullMarked;
