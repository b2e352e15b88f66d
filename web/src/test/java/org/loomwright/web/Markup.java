package org.loomwright.web;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a page tag by tag, strictly: every element that is opened is closed in its turn. */
final class Markup {
  private static final Pattern TAG =
      Pattern.compile(
          "<(?:!doctype html|(/?)([a-zA-Z][a-zA-Z0-9-]*)((?:[^<>\"']|\"[^\"]*\"|'[^']*')*?)(/?))>");

  private static final Pattern ATTRIBUTE =
      Pattern.compile("([a-zA-Z_:][a-zA-Z0-9_:.-]*)(?:\\s*=\\s*(?:\"([^\"]*)\"|'([^']*)'))?");

  private static final Set<String> VOID = Set.of("meta", "link", "input", "img", "br");

  /** An element as it was opened. */
  record Element(String tag, Map<String, String> attributes, List<String> within) {
    String get(String name) {
      return attributes.getOrDefault(name, "");
    }
  }

  private Markup() {}

  /** All elements in order; fails where the page is not well formed. */
  static List<Element> elements(String page) {
    List<Element> elements = new ArrayList<>();
    Deque<String> open = new ArrayDeque<>();
    Matcher tag = TAG.matcher(page);
    int end = 0;
    while (tag.find()) {
      String between = page.substring(end, tag.start());
      if (between.contains("<")) {
        throw new AssertionError("a loose < before: " + excerpt(page, tag.start()));
      }
      end = tag.end();
      String name = tag.group(2);
      if (name == null) {
        continue;
      }
      if (!tag.group(1).isEmpty()) {
        if (open.isEmpty() || !open.pop().equals(name)) {
          throw new AssertionError("</" + name + "> closes nothing: " + excerpt(page, tag.start()));
        }
        continue;
      }
      elements.add(new Element(name, attributes(tag.group(3)), List.copyOf(open)));
      if (tag.group(4).isEmpty() && !VOID.contains(name)) {
        open.push(name);
      }
    }
    if (!open.isEmpty() || page.substring(end).contains("<")) {
      throw new AssertionError("never closed: " + open);
    }
    return elements;
  }

  private static Map<String, String> attributes(String text) {
    Map<String, String> attributes = new LinkedHashMap<>();
    Matcher it = ATTRIBUTE.matcher(text);
    while (it.find()) {
      String value = it.group(2) != null ? it.group(2) : it.group(3) != null ? it.group(3) : "";
      if (attributes.put(it.group(1), value.replace("&amp;", "&")) != null) {
        throw new AssertionError("an attribute given twice: " + text);
      }
    }
    return attributes;
  }

  private static String excerpt(String page, int at) {
    return page.substring(Math.max(0, at - 120), Math.min(page.length(), at + 120));
  }
}
