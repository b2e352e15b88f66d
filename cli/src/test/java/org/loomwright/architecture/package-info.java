/** The rules of the house about who may know whom, and the tests that keep them. */
@NullMarked
package org.loomwright.architecture;

import org.jspecify.annotations.NullMarked;
