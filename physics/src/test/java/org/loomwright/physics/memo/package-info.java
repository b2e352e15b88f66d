@NullMarked
package org.loomwright.physics.memo;

import org.jspecify.annotations.NullMarked;
