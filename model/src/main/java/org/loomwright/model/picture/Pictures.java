package org.loomwright.model.picture;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The pictures that came with the documents.
 *
 * @param byName pictures by file name as the documents write it
 */
public record Pictures(Map<String, Picture> byName) {
  public Pictures {
    byName = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(byName));
  }

  /** No pictures, for documents that did not come from a folder. */
  public static Pictures none() {
    return new Pictures(Map.of());
  }

  /** The picture with this file name; empty when it did not come along. */
  public Optional<Picture> find(String file) {
    return Optional.ofNullable(byName.get(file));
  }
}
