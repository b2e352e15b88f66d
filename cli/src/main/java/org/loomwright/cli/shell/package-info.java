/** What every command shares: exit codes, reading of values, messages when something goes wrong. */
@NullMarked
package org.loomwright.cli.shell;

import org.jspecify.annotations.NullMarked;
