package org.loomwright.web.units;

import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The last step before a page is sent: lengths and wire sizes between its tags in the wanted units.
 * Attributes, what is typed or chosen in forms, and elements marked "as-written", "evidence" or
 * "error" stay, because they quote what is on file or was typed; pictures stay, because they are
 * drawn in the wanted units.
 */
public final class PageUnits {
  private static final Pattern TAG =
      Pattern.compile("<(/?)([a-zA-Z][\\w:-]*)((?:[^>\"']|\"[^\"]*\"|'[^']*')*)>|<![^>]*>");

  private static final Pattern KEPT_CLASS =
      Pattern.compile("class=\"(?:[^\"]*\\s)?(?:as-written|evidence|error)(?:\\s[^\"]*)?\"");

  private static final Set<String> KEPT =
      Set.of("textarea", "select", "datalist", "script", "style", "code", "svg");

  private final UnitWords words;

  /** A step with the words of the wanted units. */
  public PageUnits(UnitWords words) {
    this.words = words;
  }

  /** The page as it is sent. */
  public String of(String html) {
    StringBuilder shown = new StringBuilder(html.length() + html.length() / 16);
    Matcher tag = TAG.matcher(html);
    int at = 0;
    String kept = "";
    int depth = 0;
    while (tag.find()) {
      String text = html.substring(at, tag.start());
      shown.append(depth > 0 ? text : words.of(text)).append(tag.group());
      at = tag.end();
      String name = tag.group(2);
      if (name == null) {
        continue;
      }
      if (depth > 0) {
        if (name.equals(kept) && !tag.group(3).endsWith("/")) {
          depth += tag.group(1).isEmpty() ? 1 : -1;
        }
      } else if (tag.group(1).isEmpty() && !tag.group(3).endsWith("/") && isKept(name, tag)) {
        kept = name;
        depth = 1;
      }
    }
    String rest = html.substring(at);
    return shown.append(depth > 0 ? rest : words.of(rest)).toString();
  }

  private static boolean isKept(String name, Matcher tag) {
    return KEPT.contains(name) || KEPT_CLASS.matcher(tag.group(3)).find();
  }
}
