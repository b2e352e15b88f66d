/** What becomes of a finding: how it is taken into its vehicle. */
@NullMarked
package org.loomwright.web.found;

import org.jspecify.annotations.NullMarked;
