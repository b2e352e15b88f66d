/** Classes that break a rule of the house on purpose. */
@NullMarked
package org.loomwright.model.planted;

import org.jspecify.annotations.NullMarked;
