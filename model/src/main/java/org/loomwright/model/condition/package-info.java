/**
 * Conditions: statements about the traits of a build, such as {@code tow-prep = yes and not
 * rear-feed = no}.
 */
@NullMarked
package org.loomwright.model.condition;

import org.jspecify.annotations.NullMarked;
