/** How plans become JSON. */
@NullMarked
package org.loomwright.papers.json;

import org.jspecify.annotations.NullMarked;
