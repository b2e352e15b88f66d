package org.loomwright.model.json;

/**
 * One thing that is wrong in a document.
 *
 * @param path where, e.g. {@code traits[2].values[0].share}, or line and column for broken JSON;
 *     empty for the document as a whole
 * @param value the bad value as text, cut short where long; may be empty
 * @param message what is wrong and what would be right
 */
public record Fault(String path, String value, String message) {}
