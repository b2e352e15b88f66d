package org.loomwright.model.difference;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;

/** Values of documents in words. */
final class ValueWords {
  /** Items of a list that are named before the rest is counted. */
  private static final int LISTED = 4;

  /** Values of an object that stand for it where nothing is said of its sort. */
  private static final int TOLD = 3;

  /** Texts of up to this many words that need no quotation marks. */
  private static final int BARE_WORDS = 3;

  /** Keys by which things call themselves, the best first. */
  private static final List<String> NAMES =
      List.of("id", "number", "cavity", "name", "what", "file");

  /** Values that mean little without their key. */
  private static final Set<String> NEED_KEY =
      Set.of("section", "maxRating", "share", "feed", "limit", "ambient");

  private static final Pattern SPOT = Pattern.compile("(cavity|slot|ground|unit|loose) (.+)");

  /** What a person wants to hear of a new thing, beside its name, by what it is called. */
  private static final Map<String, List<String>> TOLD_OF =
      Map.ofEntries(
          Map.entry("run", List.of("length")),
          Map.entry("circuit", List.of("wire", "colour")),
          Map.entry("place", List.of("name", "ambient")),
          Map.entry("connector", List.of("name", "place")),
          Map.entry("fuse block", List.of("name", "place")),
          Map.entry("section", List.of("feed", "limit")),
          Map.entry("slot", List.of("section", "maxRating")),
          Map.entry("ground", List.of("name", "place")),
          Map.entry("opening", List.of("name", "place")),
          Map.entry("trait", List.of("name", "values")),
          Map.entry("value", List.of("words", "share")),
          Map.entry("rule", List.of("exclude")),
          Map.entry("evidence", List.of("how", "when", "by")),
          Map.entry("tell", List.of("how", "place")),
          Map.entry("need", List.of("kind", "feed", "continuous")),
          Map.entry("pin", List.of("name", "need")),
          Map.entry("plug", List.of("name")),
          Map.entry("wish", List.of("wish", "way")),
          Map.entry("wire", List.of("name", "price")),
          Map.entry("housing", List.of("name")),
          Map.entry("terminal", List.of("name")));

  private ValueWords() {}

  /** A value in words; a long text is cut short. */
  static String of(String key, JsonNode value) {
    return of(key, value, Text.VALUE);
  }

  private static String of(String key, JsonNode value, int most) {
    if (value.isString()) {
      return quoted(Text.line(value.stringValue(), most));
    }
    if (value.isBoolean()) {
      return value.booleanValue() ? "yes" : "no";
    }
    if (value.isNull()) {
      return "nothing";
    }
    if (value.isArray()) {
      return list(key, value);
    }
    if (value.isObject()) {
      return object(key, value);
    }
    return Text.line(value.toString(), most);
  }

  /** A text in quotation marks where it could be taken for part of the sentence. */
  static String quoted(String text) {
    boolean oneWord = !text.isEmpty() && text.chars().noneMatch(Character::isWhitespace);
    boolean fewWords =
        !text.isBlank()
            && text.equals(text.strip())
            && text.split(" ", -1).length <= BARE_WORDS
            && text.chars().noneMatch(c -> ",;:\"".indexOf(c) >= 0);
    return oneWord || fewWords || isCondition(text) ? text : "\"" + text + "\"";
  }

  private static boolean isCondition(String text) {
    return text.contains(" = ") || text.contains(" != ");
  }

  private static String list(String key, JsonNode list) {
    if (list.isEmpty()) {
      return "nothing";
    }
    List<String> shown = new ArrayList<>();
    for (JsonNode item : list) {
      if (shown.size() == LISTED) {
        break;
      }
      shown.add(
          item.isObject()
              ? itemName(key, item)
              : item.isArray() ? "a list of " + item.size() : of(key, item, Text.NAME));
    }
    int more = list.size() - shown.size();
    return String.join(list.get(0).isObject() ? "; " : ", ", shown)
        + (more > 0 ? " and " + more + " more" : "");
  }

  /** A short name for an item inside a list that is told as a whole. */
  private static String itemName(String key, JsonNode item) {
    return ownName(item).orElseGet(() -> of(key, item, Text.NAME));
  }

  /** What an item calls itself. */
  static Optional<String> ownName(JsonNode item) {
    String key = nameKey(item);
    return key.isEmpty()
        ? Optional.empty()
        : Optional.of(quoted(Text.line(item.path(key).asString(), Text.NAME)));
  }

  /** The key by which an item calls itself; empty when it has none. */
  static String nameKey(JsonNode item) {
    for (String key : NAMES) {
      JsonNode name = item.path(key);
      if (name.isString() || name.isIntegralNumber()) {
        return key;
      }
    }
    return "";
  }

  private static String object(String key, JsonNode object) {
    String told = told(FieldWords.singular(key), object, "");
    return told.isEmpty() ? "nothing" : told;
  }

  /**
   * The few values that tell most of an object.
   *
   * @param noun what it is called
   * @param without key that is not told again
   */
  static String told(String noun, JsonNode object, String without) {
    List<String> told = new ArrayList<>();
    if (object.has("value") && object.has("source")) {
      return brief("value", object.path("value"));
    }
    fromTo(object).ifPresent(told::add);
    List<String> keys = TOLD_OF.getOrDefault(noun, List.of());
    for (String key : keys) {
      JsonNode value = object.path(key);
      if (!value.isMissingNode() && !value.isNull() && !key.equals(without)) {
        told.add(brief(key, value));
      }
    }
    if (told.isEmpty()) {
      tell(object, without, false, told);
    }
    if (told.isEmpty()) {
      tell(object, without, true, told);
    }
    String glue = noun.equals("wish") ? " " : ", ";
    return told.stream().filter(it -> !it.isEmpty()).collect(Collectors.joining(glue));
  }

  private static void tell(JsonNode object, String without, boolean containers, List<String> told) {
    for (Map.Entry<String, JsonNode> field : object.properties()) {
      JsonNode value = field.getValue();
      if (told.size() < TOLD
          && !field.getKey().equals(without)
          && !value.isNull()
          && value.isContainer() == containers) {
        told.add(named(field.getKey(), value));
      }
    }
  }

  private static String brief(String key, JsonNode value) {
    if (NEED_KEY.contains(key)) {
      return named(key, value);
    }
    if (key.equals("place")) {
      return "at " + of(key, value, Text.NAME);
    }
    return value.isString() ? Text.line(value.stringValue(), Text.NAME) : of(key, value, Text.NAME);
  }

  private static String named(String key, JsonNode value) {
    if (value.isContainer()) {
      return FieldWords.of(key)
          + (value.isArray() && !value.isEmpty() && !value.get(0).isContainer()
              ? " " + list(key, value)
              : "");
    }
    if (value.isBoolean()) {
      return (value.booleanValue() ? "" : "not ") + FieldWords.of(key);
    }
    return FieldWords.of(key) + " " + of(key, value, Text.NAME);
  }

  /** "rear-block F7 to floor 3" of a wire, "left-step to sill" of a run. */
  private static Optional<String> fromTo(JsonNode object) {
    JsonNode from = object.path("from");
    JsonNode to = object.path("to");
    if (!from.isString() || !(to.isString() || to.isArray())) {
      return Optional.empty();
    }
    List<String> ends = new ArrayList<>();
    if (to.isArray()) {
      to.forEach(it -> ends.add(spot(it)));
    } else {
      ends.add(spot(to));
    }
    return Optional.of(spot(from) + " to " + (ends.isEmpty() ? "nowhere" : joined(ends)));
  }

  private static String spot(JsonNode node) {
    String text = Text.line(node.isString() ? node.stringValue() : of("", node), Text.NAME);
    Matcher found = SPOT.matcher(text);
    return found.matches() ? found.group(2) : text;
  }

  private static String joined(List<String> ends) {
    return ends.size() <= LISTED
        ? String.join(" and ", ends)
        : String.join(", ", ends.subList(0, LISTED)) + " and " + (ends.size() - LISTED) + " more";
  }
}
