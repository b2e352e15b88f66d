/** Single sums for the bench: one command per sum, one JSON object or a short block per answer. */
@NullMarked
package org.loomwright.cli.sum;

import org.jspecify.annotations.NullMarked;
