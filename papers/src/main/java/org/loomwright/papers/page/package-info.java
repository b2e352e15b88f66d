/** How a page is set: markup, style, fonts, and the way from there to a PDF file. */
@NullMarked
package org.loomwright.papers.page;

import org.jspecify.annotations.NullMarked;
