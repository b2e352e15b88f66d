package org.loomwright.web.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.loomwright.model.json.JsonText;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Revision;
import org.loomwright.store.Store;
import org.loomwright.store.Version;
import org.loomwright.web.shop.Href;
import tools.jackson.databind.JsonNode;

/**
 * Where documents speak of pictures, found in their texts.
 *
 * @param byName uses by the file name of the picture
 */
public record PictureUses(Map<String, List<Use>> byName) {
  public PictureUses {
    byName = java.util.Collections.unmodifiableMap(new TreeMap<>(byName));
  }

  /**
   * One use.
   *
   * @param document the document, e.g. "vehicle 'packer'"
   * @param href its page
   * @param what what the picture shows there, e.g. "rear fuse block, photo"
   * @param path where in the document
   */
  public record Use(String document, String href, String what, String path) {}

  /** In all documents of a store as they are now. */
  public static PictureUses of(Store store) {
    Map<String, List<Use>> uses = new TreeMap<>();
    for (Revision revision : store.documents().newest()) {
      if (!revision.key().kind().equals(DocumentKey.PICTURE)) {
        store
            .documents()
            .newest(revision.key())
            .map(Version::content)
            .map(JsonText::parse)
            .filter(JsonText.Tree.class::isInstance)
            .map(JsonText.Tree.class::cast)
            .ifPresent(tree -> walk(revision.key(), tree.node(), "", "", uses));
      }
    }
    return new PictureUses(uses);
  }

  private static void walk(
      DocumentKey key, JsonNode node, String path, String about, Map<String, List<Use>> uses) {
    if (node.isObject()) {
      String named = node.path("name").asString("");
      String within = named.isEmpty() || path.isEmpty() ? about : named;
      node.propertyStream()
          .forEach(
              it ->
                  walk(
                      key,
                      it.getValue(),
                      path.isEmpty() ? it.getKey() : path + "." + it.getKey(),
                      within,
                      uses));
    } else if (node.isArray()) {
      for (int i = 0; i < node.size(); i++) {
        walk(key, node.get(i), path + "[" + i + "]", about, uses);
      }
    } else if (node.isString() && isFile(node.stringValue())) {
      uses.computeIfAbsent(node.stringValue(), name -> new ArrayList<>())
          .add(new Use(key.shown(), href(key), what(about, path), path));
    }
  }

  private static boolean isFile(String text) {
    String lower = text.toLowerCase(Locale.ROOT);
    return text.length() <= 200
        && text.indexOf('\n') < 0
        && (lower.endsWith(".png") || lower.endsWith(".jpg") || lower.endsWith(".jpeg"));
  }

  private static String what(String about, String path) {
    String sort =
        path.contains("evidence")
            ? "evidence"
            : path.contains("photo") ? "photo of the face" : path.contains("plan") ? "plan" : "";
    return about.isEmpty() ? sort : sort.isEmpty() ? about : about + ", " + sort;
  }

  private static String href(DocumentKey key) {
    return switch (key.kind()) {
      case "vehicle" -> Href.vehicle(key.id());
      case "equipment" -> Href.equipment(key.id());
      case "parts" -> Href.parts(key.id());
      case "rules" -> Href.rules(key.id());
      default -> Href.text(key.kind(), key.id());
    };
  }

  /** Uses of a picture. */
  public List<Use> of(String name) {
    return byName.getOrDefault(name, List.of());
  }
}
