package org.loomwright.model.workspace;

import org.loomwright.model.json.Bound;
import tools.jackson.databind.JsonNode;

/**
 * A file as far as it could be read.
 *
 * @param file file name
 * @param tree its JSON
 * @param bound what became of it
 */
record Source(String file, JsonNode tree, Bound bound) {}
