package org.loomwright.web.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Where a part is in a document, as addresses say it: keys and names of items with slashes between
 * them, such as {@code fuseBlocks/rear-block/slots/F3}. An item without a name of its own is {@code
 * ~i2}, counted from 0. In names a tilde is written {@code ~0}, a slash {@code ~1} (as in RFC
 * 6901).
 *
 * @param steps keys and names, as addresses spell them; none for the whole document
 */
public record PartPath(List<String> steps) {
  private static final String INDEX = "~i";

  public PartPath {
    steps = List.copyOf(steps);
  }

  /** The whole document. */
  public static PartPath whole() {
    return new PartPath(List.of());
  }

  /** Keys and names, unescaped. */
  public static PartPath of(String... names) {
    return new PartPath(Stream.of(names).map(PartPath::escaped).toList());
  }

  /** A connector or fuse block of a vehicle. */
  public static PartPath ofFace(boolean block, String id) {
    return of(block ? "fuseBlocks" : "connectors", id);
  }

  /** Reads what an address says; anything can be read, though it may lead nowhere. */
  public static PartPath parse(String text) {
    return new PartPath(text.isEmpty() ? List.of() : List.of(text.split("/", -1)));
  }

  /** What an address says. */
  public String text() {
    return String.join("/", steps);
  }

  /** The way on to a key, or to an item by its name. */
  public PartPath to(String name) {
    return with(escaped(name));
  }

  /** The way on to an item without a name. */
  public PartPath to(int index) {
    return with(INDEX + index);
  }

  private PartPath with(String step) {
    List<String> longer = new ArrayList<>(steps);
    longer.add(step);
    return new PartPath(longer);
  }

  /** Whether it is the whole document. */
  public boolean isWhole() {
    return steps.isEmpty();
  }

  /** What it is in: one step less. */
  public PartPath parent() {
    return new PartPath(steps.subList(0, Math.max(0, steps.size() - 1)));
  }

  /** The last step in words. */
  public String last() {
    return steps.isEmpty() ? "" : words(steps.get(steps.size() - 1));
  }

  /** All steps in words. */
  public String words() {
    return steps.stream().map(PartPath::words).collect(Collectors.joining(" / "));
  }

  private static String words(String step) {
    int index = index(step);
    return index < 0 ? name(step) : "no. " + (index + 1);
  }

  /** The index a step gives; -1 when it gives a name. */
  static int index(String step) {
    return step.matches("~i\\d{1,6}") ? Integer.parseInt(step.substring(2)) : -1;
  }

  /** The key or name a step gives. */
  static String name(String step) {
    return step.replace("~1", "/").replace("~0", "~");
  }

  private static String escaped(String name) {
    return name.replace("~", "~0").replace("/", "~1");
  }
}
