/** The summary of a plan that fits on one screen. */
@NullMarked
package org.loomwright.cli.plan.summary;

import org.jspecify.annotations.NullMarked;
