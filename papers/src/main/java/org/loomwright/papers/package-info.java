/** The pack: PDF, spreadsheets, lists. */
@NullMarked
package org.loomwright.papers;

import org.jspecify.annotations.NullMarked;
