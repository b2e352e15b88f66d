/** Cheapest trees and forests over links between nodes, with what is proven about them. */
@NullMarked
package org.loomwright.planner.tree;

import org.jspecify.annotations.NullMarked;
