package org.loomwright.web.view;

/**
 * What surrounds every page.
 *
 * @param title what the page is about
 * @param look "auto", "light" or "dark"
 * @param here address of the page, to come back to
 * @param where what the pages show, in words
 * @param sought words in the search box
 */
public record Frame(String title, String look, String here, String where, String sought) {}
