package org.loomwright.model.design;

/**
 * One thing the proof had to show.
 *
 * @param id id, e.g. "cover"
 * @param words what had to be shown
 * @param shown whether it was
 * @param detail figure or place where it failed
 */
public record Obligation(String id, String words, boolean shown, String detail) {}
