package org.loomwright.model.workspace;

/**
 * The text of a document that need not lie in a folder.
 *
 * @param name name by which problems speak of it, e.g. a file name
 * @param text JSON text
 */
public record NamedText(String name, String text) {}
