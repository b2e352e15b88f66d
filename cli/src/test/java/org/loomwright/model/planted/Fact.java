package org.loomwright.model.planted;

/** Something of the model for planted faults to lean on. */
public record Fact(String text) {}
