/** The pages of a workspace, served on this computer only. */
@NullMarked
package org.loomwright.web;

import org.jspecify.annotations.NullMarked;
