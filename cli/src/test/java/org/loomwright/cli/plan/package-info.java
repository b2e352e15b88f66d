/** Tests of the commands that plan kits, words in, text, files and exit code out. */
@NullMarked
package org.loomwright.cli.plan;

import org.jspecify.annotations.NullMarked;
