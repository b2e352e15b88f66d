/**
 * What is known of one model family: traits, places, runs, connectors, fuse blocks, grounds,
 * circuits.
 */
@NullMarked
package org.loomwright.model.vehicle;

import org.jspecify.annotations.NullMarked;
