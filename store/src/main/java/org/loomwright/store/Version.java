package org.loomwright.store;

/**
 * A revision with its text.
 *
 * @param revision the revision
 * @param content the document's text
 */
public record Version(Revision revision, String content) {}
