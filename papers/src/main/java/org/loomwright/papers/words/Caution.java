package org.loomwright.papers.words;

/**
 * One caution.
 *
 * @param title what it is about
 * @param text what to do
 */
public record Caution(String title, String text) {}
