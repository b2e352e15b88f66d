/** Tests of the command line as a user sees it: words in, text and exit code out. */
@NullMarked
package org.loomwright.cli;

import org.jspecify.annotations.NullMarked;
