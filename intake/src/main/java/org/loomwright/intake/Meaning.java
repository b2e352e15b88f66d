package org.loomwright.intake;

import java.util.List;

/** What a column of a pinout says of the cavity in its row. */
public enum Meaning {
  CAVITY(
      "cavity number",
      "cavity",
      "cavity no",
      "cavity number",
      "cav",
      "pin",
      "pin no",
      "pin number",
      "pins",
      "terminal",
      "terminal no",
      "term",
      "position",
      "pos",
      "way",
      "contact",
      "contact no",
      "no",
      "nr",
      "number",
      "#"),
  NAME(
      "name of the circuit",
      "circuit",
      "circuit name",
      "circuit function",
      "function",
      "description",
      "desc",
      "signal",
      "signal name",
      "name",
      "purpose",
      "use",
      "used for",
      "designation",
      "wire function"),
  FEED(
      "supply kind",
      "feed",
      "feed kind",
      "supply",
      "supply kind",
      "din",
      "din 72552",
      "terminal designation"),
  SIZE(
      "wire size",
      "size",
      "wire size",
      "gauge",
      "wire gauge",
      "awg",
      "ga",
      "mm2",
      "mm²",
      "sq mm",
      "sqmm",
      "csa",
      "cross section",
      "section",
      "area",
      "cable size",
      "conductor size"),
  COLOUR(
      "wire colour",
      "colour",
      "color",
      "col",
      "clr",
      "wire colour",
      "wire color",
      "cable colour",
      "cable color",
      "insulation",
      "insulation colour",
      "insulation color",
      "colour code",
      "color code",
      "wire colours",
      "wire colors",
      "colours",
      "colors"),
  FROM("where it comes from", "from", "source", "origin", "fed from", "fed by", "coming from"),
  TO(
      "where it goes",
      "to",
      "destination",
      "dest",
      "goes to",
      "going to",
      "connects to",
      "connected to",
      "target",
      "component",
      "load",
      "leads to",
      "other end",
      "far end"),
  FUSE(
      "fuse or slot",
      "fuse",
      "fuses",
      "fuse no",
      "fuse number",
      "fuse slot",
      "slot",
      "slot no",
      "protection",
      "protected by",
      "fuse rating",
      "rating",
      "amps",
      "amp",
      "ampere"),
  NOTE("note", "note", "notes", "remark", "remarks", "comment", "comments", "info", "condition"),
  /** Left out, because a person said so; never guessed. */
  LEFT_OUT("left out");

  private final String words;
  private final List<String> headers;

  Meaning(String words, String... headers) {
    this.words = words;
    this.headers = List.of(headers);
  }

  /** For people, e.g. "wire colour". */
  public String words() {
    return words;
  }

  /** Headers, in lower case with single spaces, that are used for it. */
  List<String> headers() {
    return headers;
  }

  /** Whether more than one column may have it. */
  public boolean isRepeatable() {
    return this == NOTE || this == LEFT_OUT;
  }
}
