package org.loomwright.store;

/**
 * One exact revision that a release was made of.
 *
 * @param key which document
 * @param number its revision
 */
public record Pin(DocumentKey key, long number) {}
