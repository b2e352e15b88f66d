/** A pinout on its way from a table to the vehicle. */
@NullMarked
package org.loomwright.web.paste;

import org.jspecify.annotations.NullMarked;
