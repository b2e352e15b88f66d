/** The command line. */
@NullMarked
package org.loomwright.cli;

import org.jspecify.annotations.NullMarked;
