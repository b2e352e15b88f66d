package org.loomwright.physics.planted;

import org.loomwright.model.planted.Fact;

/** Planted fault: a sum that knows the model. */
public record KnowsTheModel(Fact fact) {}
