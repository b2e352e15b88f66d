/** Tests of the pages. */
@NullMarked
package org.loomwright.web;

import org.jspecify.annotations.NullMarked;
