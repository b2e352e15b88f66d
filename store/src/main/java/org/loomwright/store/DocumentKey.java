package org.loomwright.store;

import java.util.Comparator;
import java.util.regex.Pattern;

/**
 * Which document.
 *
 * @param kind word of its kind, e.g. {@code vehicle}
 * @param id its id, unique among documents of the kind
 */
public record DocumentKey(String kind, String id) implements Comparable<DocumentKey> {
  /** Kind under which the names of pictures are kept; their id is the file name. */
  public static final String PICTURE = "picture";

  private static final int LONGEST = 200;
  private static final Pattern KIND = Pattern.compile("[a-z][a-z0-9-]{0,39}");
  private static final Comparator<DocumentKey> ORDER =
      Comparator.comparing(DocumentKey::kind).thenComparing(DocumentKey::id);

  public DocumentKey {
    if (!KIND.matcher(kind).matches()) {
      throw new StoreException(
          "'" + kind + "' is no kind of document; write a word in lower case, such as vehicle");
    }
    if (id.isBlank() || id.length() > LONGEST || id.chars().anyMatch(Character::isISOControl)) {
      throw new StoreException(
          "'"
              + id.replaceAll("\\p{Cntrl}", "?")
              + "' can't be the id of a document; write 1 to "
              + LONGEST
              + " characters without line breaks");
    }
  }

  /** For people, e.g. {@code vehicle 'packer'}. */
  public String shown() {
    return kind + " '" + id + "'";
  }

  @Override
  public int compareTo(DocumentKey other) {
    return ORDER.compare(this, other);
  }
}
