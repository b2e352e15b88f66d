/** Whole stories told in a browser: what persons do with the pages from their first visit on. */
@NullMarked
package org.loomwright.web.browser.story;

import org.jspecify.annotations.NullMarked;
