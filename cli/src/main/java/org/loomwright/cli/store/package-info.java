/** The commands that take documents into the store and out of it, and keep it safe. */
@NullMarked
package org.loomwright.cli.store;

import org.jspecify.annotations.NullMarked;
