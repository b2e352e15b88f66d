/**
 * What is known: vehicle, equipment, kit, parts, rules, finding, job, stock; conditions;
 * quantities; JSON.
 */
@NullMarked
package org.loomwright.model;

import org.jspecify.annotations.NullMarked;
