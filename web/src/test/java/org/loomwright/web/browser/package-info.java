/** The pages in a real browser: what is seen, reached by keyboard and asked of the network. */
@NullMarked
package org.loomwright.web.browser;

import org.jspecify.annotations.NullMarked;
