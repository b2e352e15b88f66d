package org.loomwright.model.planted;

import java.awt.Color;

/** Planted fault: a model that paints. */
public record Painter(Color colour) {}
