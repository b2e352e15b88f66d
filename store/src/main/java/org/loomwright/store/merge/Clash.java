package org.loomwright.store.merge;

import java.util.Optional;

/**
 * A part of a document that two edits made different. The texts are JSON; empty where the part is
 * not there.
 *
 * @param path where, e.g. {@code runs[id="sill"].length}; empty for the whole document
 * @param base before both edits
 * @param theirs after the edit that was saved first
 * @param yours after the edit that was to be saved
 */
public record Clash(
    String path, Optional<String> base, Optional<String> theirs, Optional<String> yours) {}
