/** Tests of what all commands share. */
@NullMarked
package org.loomwright.cli.shell;

import org.jspecify.annotations.NullMarked;
