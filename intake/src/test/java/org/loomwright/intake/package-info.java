@NullMarked
package org.loomwright.intake;

import org.jspecify.annotations.NullMarked;
