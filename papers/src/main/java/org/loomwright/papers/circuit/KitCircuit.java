package org.loomwright.papers.circuit;

import org.loomwright.drawing.strip.StripCircuit;

/**
 * The circuit of one pin, as it is in some cases.
 *
 * @param title the pin in words
 * @param in the cases in words
 * @param figures which of them the figures are from, and in which state; empty where there is none
 * @param circuit its parts in order
 */
public record KitCircuit(String title, String in, String figures, StripCircuit circuit) {}
