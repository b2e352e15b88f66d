/** Programs that draw what the demo shows. */
@NullMarked
package org.loomwright.drawing.demo;

import org.jspecify.annotations.NullMarked;
