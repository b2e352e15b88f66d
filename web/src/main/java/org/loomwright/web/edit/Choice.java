package org.loomwright.web.edit;

/**
 * Something a field may name.
 *
 * @param value what is written
 * @param words what it is, for people; empty where the value says it
 */
public record Choice(String value, String words) {
  /** What a list shows. */
  public String shown() {
    if (words.isEmpty()) {
      return value;
    }
    return words.equals(value.replace('-', ' ')) ? words : words + " (" + value + ")";
  }
}
