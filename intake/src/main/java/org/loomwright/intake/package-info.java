/**
 * From what a person copies out of a spreadsheet or a service table to a change of a vehicle: the
 * table, what its columns mean, a preview that can be corrected, and the vehicle with what was
 * accepted. Pure functions; nothing is saved here.
 */
@NullMarked
package org.loomwright.intake;

import org.jspecify.annotations.NullMarked;
