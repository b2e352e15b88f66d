@NullMarked
package org.loomwright.model.hand;

import org.jspecify.annotations.NullMarked;
