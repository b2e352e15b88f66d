package org.loomwright.model.workspace;

import org.loomwright.model.document.Document;

/**
 * A file and the document that was read from it.
 *
 * @param file name, relative to the folder, with "/" before a file of a sub-folder
 * @param document what it holds
 */
public record LoadedFile(String file, Document document) {}
