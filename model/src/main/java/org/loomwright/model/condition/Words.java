package org.loomwright.model.condition;

import java.util.Locale;
import java.util.Set;

/** The words and names of the condition language. */
final class Words {
  static final String AND = "and";
  static final String OR = "or";
  static final String NOT = "not";
  static final String IN = "in";
  static final String ALWAYS = "always";
  static final String NEVER = "never";
  static final String UNKNOWN = "unknown";

  private static final Set<String> RESERVED = Set.of(AND, OR, NOT, IN, ALWAYS, NEVER, UNKNOWN);

  private Words() {}

  /** Whether a word of the language, in any mix of upper and lower case. */
  static boolean isReserved(String word) {
    return RESERVED.contains(word.toLowerCase(Locale.ROOT));
  }

  /** Whether a word may name a trait or a value. */
  static boolean isName(String word) {
    return !word.isEmpty()
        && isNameStart(word.codePointAt(0))
        && word.codePoints().allMatch(Words::isNamePart)
        && !isReserved(word);
  }

  static boolean isNameStart(int c) {
    return Character.isLetter(c) || (c >= '0' && c <= '9');
  }

  static boolean isNamePart(int c) {
    return isNameStart(c) || c == '-' || c == '_' || c == '.' || c == '/' || c == ':';
  }

  static String checkedName(String word) {
    if (!isName(word)) {
      throw new IllegalArgumentException(
          "\""
              + ConditionException.printable(word, 40)
              + "\" can't name a trait or a value: a name starts with a letter or digit, goes on with"
              + " letters, digits and - _ . / :, and is no word of the condition language");
    }
    return word;
  }
}
