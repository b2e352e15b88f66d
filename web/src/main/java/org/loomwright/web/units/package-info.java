/** Lengths and wire sizes in the units a person wants to see; what is on file stays as it is. */
@NullMarked
package org.loomwright.web.units;

import org.jspecify.annotations.NullMarked;
