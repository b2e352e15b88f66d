@NullMarked
package org.loomwright.web.units;

import org.jspecify.annotations.NullMarked;
