/** Published values and worked cases that every module's tests can use; never shipped. */
@NullMarked
package org.loomwright.reference;

import org.jspecify.annotations.NullMarked;
