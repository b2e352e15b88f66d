package org.loomwright.web.edit;

/**
 * A problem because of which nothing was saved, as the list on top of a form has it.
 *
 * @param where what it is about, in words; empty when it says so itself
 * @param message what is wrong and what would be right
 * @param href where that can be put right; empty when there is no such place
 */
public record Complaint(String where, String message, String href) {}
