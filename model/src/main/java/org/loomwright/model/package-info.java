/** What is known: vehicle, equipment, kit, parts, rules, finding; conditions; quantities; JSON. */
@NullMarked
package org.loomwright.model;

import org.jspecify.annotations.NullMarked;
