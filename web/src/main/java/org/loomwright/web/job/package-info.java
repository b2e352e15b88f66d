/** What the pages of a job show, and the changes they make to its document. */
@NullMarked
package org.loomwright.web.job;

import org.jspecify.annotations.NullMarked;
