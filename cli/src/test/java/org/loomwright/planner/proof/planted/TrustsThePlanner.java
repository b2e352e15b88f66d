package org.loomwright.planner.proof.planted;

import org.loomwright.planner.planted.Choice;

/** Planted fault: a proof that takes the planner's word. */
public record TrustsThePlanner(Choice choice) {}
