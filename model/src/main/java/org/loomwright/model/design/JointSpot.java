package org.loomwright.model.design;

import java.util.Optional;

/**
 * Where a joint lies.
 *
 * @param joint the joint
 * @param place place it belongs to
 * @param run run on which it lies; empty where it ends a stub of its own at the place
 * @param atMm distance from the place along the run, or length of the stub
 */
public record JointSpot(String joint, String place, Optional<String> run, double atMm) {}
