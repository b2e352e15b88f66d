package org.loomwright.web.shop;

import java.util.regex.Pattern;

/** Turns a section made for paper into one for the screen. */
final class PaperMarkup {
  private static final Pattern STYLE = Pattern.compile(" style=\"[^\"]*\"");
  private static final Pattern COLUMNS = Pattern.compile("<colgroup>.*?</colgroup>");
  private static final Pattern LIST =
      Pattern.compile("<table class=\"list.*?</table>", Pattern.DOTALL);
  private static final Pattern LAYOUT =
      Pattern.compile(
          "<table(?= id=\"step-| class=\"(?:step|faces|legend|facts|plain|answers|bundles|sums))");
  private static final Pattern STEP = Pattern.compile("(?<=[>\\h(])(s|S)tep\\h(\\d+)(?![\\d.]\\d)");
  private static final Pattern MM_HEIGHT = Pattern.compile("(<svg [^>]*?) height=\"[0-9.]+mm\"");

  private PaperMarkup() {}

  /**
   * The section as part of a page: headings one step lower, lists in boxes that scroll sideways by
   * themselves, no styles in the markup, which the page's rules forbid.
   *
   * @param guide address of the page with the guide's steps
   */
  static String forScreen(String markup, String guide) {
    String text = COLUMNS.matcher(markup).replaceAll("");
    text = STYLE.matcher(text).replaceAll("");
    text = text.replace("<h3", "<h4").replace("</h3>", "</h4>");
    text = text.replace("<h2", "<h3").replace("</h2>", "</h3>");
    text = text.replace("<th class=\"", "<th scope=\"col\" class=\"");
    text = LAYOUT.matcher(text).replaceAll("<table role=\"presentation\"");
    text =
        LIST.matcher(text)
            .replaceAll(
                it ->
                    "<div class=\"scroll\" tabindex=\"0\" role=\"group\""
                        + " aria-label=\"table, scrolls sideways\">"
                        + java.util.regex.Matcher.quoteReplacement(it.group())
                        + "</div>");
    text = MM_HEIGHT.matcher(text).replaceAll("$1");
    return STEP.matcher(text).replaceAll("<a href=\"" + guide + "#step-$2\">$1tep $2</a>");
  }
}
