package org.loomwright.drawing.ink;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.loomwright.drawing.LetterWidths;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** A picture read back from its SVG, so that nothing of the drawing code is trusted. */
public final class Looked {
  /** Coordinates are written to a hundredth. */
  private static final double ROUNDING = 0.02;

  private static final Pattern PAIR = Pattern.compile("(-?[0-9.]+),(-?[0-9.]+)");

  private final Document document;

  private Looked(Document document) {
    this.document = document;
  }

  /** A line of text: its box and what it says. */
  public record Text(Box box, double middleY, String words) {}

  /** Parses a picture. */
  public static Looked at(String svg) {
    try {
      DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
      builder.setErrorHandler(null);
      return new Looked(
          builder.parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8))));
    } catch (Exception e) {
      throw new AssertionError("the picture is no XML: " + svg, e);
    }
  }

  /** Valid, no text over text, nothing outside. */
  public void isSound() {
    assertThat(overlaps()).as("text over text").isEmpty();
    assertThat(outside()).as("outside the picture").isEmpty();
  }

  /** All lines of text. */
  public List<Text> texts() {
    List<Text> texts = new ArrayList<>();
    for (Element it : elements("text", "")) {
      double size = number(it, "font-size");
      String words = it.getTextContent();
      double width = size * LetterWidths.ems(words);
      if (it.hasAttribute("textLength")) {
        assertThat(number(it, "textLength")).isCloseTo(width, within());
      }
      double x = number(it, "x");
      double baseline = number(it, "y");
      // Accents reach 0.95 of the size above the baseline, descenders 0.24 below it.
      Box box =
          new Box(x - width / 2, baseline - 0.95 * size, x + width / 2, baseline + 0.24 * size);
      texts.add(new Text(box, baseline - 0.36 * size, words));
    }
    return texts;
  }

  /** Elements by tag and class; every class for an empty one. */
  public List<Element> elements(String tag, String name) {
    List<Element> elements = new ArrayList<>();
    NodeList nodes = document.getElementsByTagName(tag);
    for (int i = 0; i < nodes.getLength(); i++) {
      Element it = (Element) nodes.item(i);
      if (name.isEmpty() || it.getAttribute("class").equals(name)) {
        elements.add(it);
      }
    }
    return elements;
  }

  /** Pairs of text that share some area. */
  public List<String> overlaps() {
    List<Text> texts = texts();
    List<String> found = new ArrayList<>();
    for (int i = 0; i < texts.size(); i++) {
      Box one = texts.get(i).box().grown(-ROUNDING);
      for (int j = 0; j < i; j++) {
        if (one.overlaps(texts.get(j).box().grown(-ROUNDING))) {
          found.add("'" + texts.get(i).words() + "' over '" + texts.get(j).words() + "'");
        }
      }
    }
    return found;
  }

  /** Text and corners outside the picture. */
  public List<String> outside() {
    String[] view = document.getDocumentElement().getAttribute("viewBox").split(" ", 4);
    Box frame =
        new Box(0, 0, Double.parseDouble(view[2]), Double.parseDouble(view[3])).grown(ROUNDING);
    List<String> found = new ArrayList<>();
    for (Text it : texts()) {
      if (!it.box().within(frame)) {
        found.add("text '" + it.words() + "' " + it.box());
      }
    }
    for (Element it : elements("rect", "")) {
      if (!box(it).within(frame)) {
        found.add(it.getAttribute("class") + " " + box(it));
      }
    }
    for (Element it : elements("circle", "")) {
      Spot middle = new Spot(number(it, "cx"), number(it, "cy"));
      Box box = new Box(middle.x(), middle.y(), middle.x(), middle.y()).grown(number(it, "r"));
      if (!box.within(frame)) {
        found.add(it.getAttribute("class") + " " + box);
      }
    }
    corners("path", "d", frame, found);
    corners("polygon", "points", frame, found);
    return found;
  }

  /** Box of a rectangle. */
  public static Box box(Element rect) {
    return Box.at(
        number(rect, "x"), number(rect, "y"), number(rect, "width"), number(rect, "height"));
  }

  /** A number of an element. */
  public static double number(Element element, String attribute) {
    return Double.parseDouble(element.getAttribute(attribute));
  }

  private void corners(String tag, String attribute, Box frame, List<String> found) {
    for (Element it : elements(tag, "")) {
      Matcher pairs = PAIR.matcher(it.getAttribute(attribute));
      while (pairs.find()) {
        double x = Double.parseDouble(pairs.group(1));
        double y = Double.parseDouble(pairs.group(2));
        if (!new Box(x, y, x, y).within(frame)) {
          found.add(it.getAttribute("class") + " at " + pairs.group());
        }
      }
    }
  }

  private static org.assertj.core.data.Offset<Double> within() {
    return org.assertj.core.data.Offset.offset(ROUNDING);
  }
}
