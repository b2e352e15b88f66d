package org.loomwright.papers.board;

import java.awt.Color;
import java.awt.geom.AffineTransform;
import java.util.ArrayList;
import java.util.List;
import org.apache.batik.parser.AWTTransformProducer;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Takes the texts out of one of our drawings, each with its place in the drawing's coordinates, so
 * that they can be set as text of the page. Knows the forms that our drawings use: groups with a
 * transform, drawings within a drawing, and texts held at their middle.
 */
final class SvgTexts {
  private final List<Words> found = new ArrayList<>();

  private SvgTexts() {}

  /**
   * A line of text.
   *
   * @param place from the text's own coordinates to the drawing's
   * @param x middle of the line in its own coordinates
   * @param y its baseline in its own coordinates
   * @param size font size
   * @param length length of the line
   */
  record Words(
      AffineTransform place,
      double x,
      double y,
      double size,
      double length,
      Color fill,
      String text) {}

  /** The texts of a drawing, which loses them. */
  static List<Words> takeFrom(Element root) {
    SvgTexts texts = new SvgTexts();
    texts.children(root, new AffineTransform(), Color.BLACK);
    return texts.found;
  }

  private void children(Element parent, AffineTransform place, Color fill) {
    for (Node node = parent.getFirstChild(); node != null; ) {
      Node next = node.getNextSibling();
      if (node instanceof Element element) {
        element(parent, element, place, fill);
      }
      node = next;
    }
  }

  private void element(Element parent, Element element, AffineTransform place, Color fill) {
    AffineTransform own = new AffineTransform(place);
    if (element.hasAttribute("transform")) {
      own.concatenate(
          AWTTransformProducer.createAffineTransform(element.getAttribute("transform")));
    }
    Color colour =
        element.getAttribute("fill").startsWith("#") ? colour(element.getAttribute("fill")) : fill;
    if ("text".equals(element.getLocalName())) {
      found.add(
          new Words(
              own,
              number(element, "x"),
              number(element, "y"),
              number(element, "font-size"),
              number(element, "textLength"),
              colour,
              element.getTextContent()));
      parent.removeChild(element);
      return;
    }
    if ("svg".equals(element.getLocalName())) {
      own.concatenate(inner(element));
    }
    children(element, own, colour);
  }

  /** From a drawing within a drawing to the outer one; our drawings keep their proportions. */
  private static AffineTransform inner(Element svg) {
    AffineTransform place =
        AffineTransform.getTranslateInstance(optional(svg, "x"), optional(svg, "y"));
    String[] box = svg.getAttribute("viewBox").trim().split("[ ,]+", -1);
    if (box.length == 4) {
      place.scale(
          number(svg, "width") / Double.parseDouble(box[2]),
          number(svg, "height") / Double.parseDouble(box[3]));
      place.translate(-Double.parseDouble(box[0]), -Double.parseDouble(box[1]));
    }
    return place;
  }

  private static double optional(Element element, String attribute) {
    return element.hasAttribute(attribute) ? number(element, attribute) : 0;
  }

  private static double number(Element element, String attribute) {
    try {
      return Double.parseDouble(element.getAttribute(attribute));
    } catch (NumberFormatException e) {
      throw new IllegalStateException(
          "a drawing's "
              + element.getLocalName()
              + " has "
              + attribute
              + "=\""
              + element.getAttribute(attribute)
              + "\"; a plain number is wanted",
          e);
    }
  }

  /** Of "#rgb" or "#rrggbb". */
  private static Color colour(String hex) {
    String six =
        hex.length() == 4
            ? "#"
                + hex.charAt(1)
                + hex.charAt(1)
                + hex.charAt(2)
                + hex.charAt(2)
                + hex.charAt(3)
                + hex.charAt(3)
            : hex;
    return Color.decode(six);
  }
}
