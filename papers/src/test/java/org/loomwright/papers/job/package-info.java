/** Tests of the papers of a job. */
@NullMarked
package org.loomwright.papers.job;

import org.jspecify.annotations.NullMarked;
