@NullMarked
package org.loomwright.web.job;

import org.jspecify.annotations.NullMarked;
