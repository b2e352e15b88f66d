package org.loomwright.web.picture;

import java.util.Optional;
import org.loomwright.model.json.JsonText;
import org.loomwright.model.vehicle.FacePhoto;
import org.loomwright.model.vehicle.PhotoPoint;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The photo of a connector, fuse block or housing in the text of its document. */
public final class PhotoText {
  private PhotoText() {}

  /**
   * A document's text with a photo in it.
   *
   * @param list key of the list its owner is in, e.g. "connectors"
   * @param id id of the owner
   * @param photo the photo; empty takes it out
   * @throws IllegalArgumentException when the text has no such owner
   */
  public static String with(String text, String list, String id, Optional<FacePhoto> photo) {
    if (JsonText.parse(text) instanceof JsonText.Tree tree) {
      for (JsonNode it : tree.node().path(list)) {
        if (it instanceof ObjectNode owner && owner.path("id").asString("").equals(id)) {
          owner.remove("photo");
          photo.ifPresent(its -> owner.set("photo", node(its)));
          return tree.node().toString();
        }
      }
    }
    throw new IllegalArgumentException("no '" + id + "' among " + list);
  }

  private static ObjectNode node(FacePhoto photo) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("file", photo.file()).put("side", PhotoForm.word(photo.side()));
    ArrayNode points = node.putArray("points");
    for (PhotoPoint it : photo.points()) {
      ObjectNode point = points.addObject();
      it.cavity().ifPresent(cavity -> point.put("cavity", cavity));
      it.corner().ifPresent(corner -> point.put("corner", PhotoForm.word(corner)));
      point.put("x", it.x()).put("y", it.y());
    }
    return node;
  }
}
