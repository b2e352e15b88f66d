/** Tests of the forms. */
@NullMarked
package org.loomwright.web.edit;

import org.jspecify.annotations.NullMarked;
