/** The map of a vehicle's places and runs on its plan view: what it shows and what changes it. */
@NullMarked
package org.loomwright.web.map;

import org.jspecify.annotations.NullMarked;
