/** One vehicle on one day: what was asked, done, measured and left as fitted. */
@NullMarked
package org.loomwright.model.job;

import org.jspecify.annotations.NullMarked;
