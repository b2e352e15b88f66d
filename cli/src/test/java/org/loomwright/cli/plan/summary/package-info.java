/** Tests of the summary, on plans made by hand. */
@NullMarked
package org.loomwright.cli.plan.summary;

import org.jspecify.annotations.NullMarked;
