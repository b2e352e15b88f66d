/** Tests of the commands that work on the store. */
@NullMarked
package org.loomwright.cli.store;

import org.jspecify.annotations.NullMarked;
