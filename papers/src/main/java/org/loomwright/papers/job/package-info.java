/** Papers of one job: what was fitted, the sheet for the owner, codes that are scanned. */
@NullMarked
package org.loomwright.papers.job;

import org.jspecify.annotations.NullMarked;
