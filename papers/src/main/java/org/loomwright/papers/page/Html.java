package org.loomwright.papers.page;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * Markup under construction. Words always go in escaped; only pictures made by this program go in
 * as they are.
 */
public final class Html {
  /** A space between a number and its unit. */
  private static final Pattern UNIT =
      Pattern.compile(
          "(?<=\\d) (?=(?:mm²|mm|cm|m|kA|mA|A|mV|V|W|mΩ|Ω|°C|K|AWG|min|h|s|%|EUR)(?![\\p{L}\\d]))");

  private final StringBuilder out = new StringBuilder(1 << 16);

  /** Opens an element; an empty class leaves the attribute out. */
  public Html open(String tag, String cssClass) {
    out.append('<').append(tag);
    if (!cssClass.isEmpty()) {
      out.append(" class=\"").append(escape(cssClass)).append('"');
    }
    out.append('>');
    return this;
  }

  /** Opens an element that links can name. */
  public Html open(String tag, String cssClass, String id) {
    out.append('<').append(tag).append(" id=\"").append(escape(id)).append('"');
    if (!cssClass.isEmpty()) {
      out.append(" class=\"").append(escape(cssClass)).append('"');
    }
    out.append('>');
    return this;
  }

  /** Closes an element. */
  public Html close(String tag) {
    out.append("</").append(tag).append(">\n");
    return this;
  }

  /** Words; a line feed becomes a new line, and a number keeps its unit beside it. */
  public Html words(String words) {
    String kept = UNIT.matcher(words).replaceAll("\u00A0");
    out.append(escape(kept).replace("\n", "<br/>"));
    return this;
  }

  /** An element that holds words only. */
  public Html line(String tag, String cssClass, String words) {
    return open(tag, cssClass).words(words).close(tag);
  }

  /** A link to an element of this paper. */
  public Html link(String id, String cssClass, String words) {
    out.append("<a class=\"")
        .append(escape(cssClass))
        .append("\" href=\"#")
        .append(escape(id))
        .append("\">");
    words(words);
    out.append("</a>");
    return this;
  }

  /** A picture drawn by this program. */
  public Html picture(String svg) {
    out.append("<div class=\"picture\">").append(svg).append("</div>");
    return this;
  }

  /** A box to tick. */
  public Html tickBox() {
    out.append("<span class=\"tick\"></span>");
    return this;
  }

  /** A labelled line to write on. */
  public Html blank(String label, double widthMm) {
    out.append("<span class=\"blank\">");
    words(label);
    out.append(" <span class=\"rule\" style=\"width:")
        .append(String.format(Locale.ROOT, "%.0fmm", widthMm))
        .append("\">\u00A0</span></span> ");
    return this;
  }

  /** A bulleted list of words. */
  public Html bullets(List<String> items) {
    if (!items.isEmpty()) {
      open("ul", "");
      items.forEach(it -> line("li", "", it));
      close("ul");
    }
    return this;
  }

  /** A table whose heading is repeated on every page and whose rows are never broken. */
  public Html table(List<Column> columns, List<List<String>> rows) {
    return table("", columns, rows);
  }

  /** A table in a style of its own. */
  public Html table(String cssClass, List<Column> columns, List<List<String>> rows) {
    open("table", cssClass.isEmpty() ? "list" : "list " + cssClass);
    columns(columns);
    out.append("<thead><tr>");
    for (Column column : columns) {
      line("th", kind(column), column.head());
    }
    out.append("</tr></thead><tbody>");
    for (List<String> row : rows) {
      if (row.size() != columns.size()) {
        throw new IllegalArgumentException(
            "a row of " + row.size() + " cells in a table of " + columns.size() + " columns");
      }
      out.append("<tr>");
      for (int i = 0; i < row.size(); i++) {
        line("td", kind(columns.get(i)), row.get(i));
      }
      out.append("</tr>");
    }
    out.append("</tbody>");
    return close("table");
  }

  private void columns(List<Column> columns) {
    out.append("<colgroup>");
    for (Column column : columns) {
      out.append("<col style=\"width:")
          .append(String.format(Locale.ROOT, "%.2f%%", column.share()))
          .append("\"/>");
    }
    out.append("</colgroup>");
  }

  private static String kind(Column column) {
    return column.kind().name().toLowerCase(Locale.ROOT);
  }

  /** Everything so far. */
  public String markup() {
    return out.toString();
  }

  /** Words made safe for element content and attributes; characters XML does not allow go. */
  public static String escape(String words) {
    StringBuilder safe = new StringBuilder(words.length() + 16);
    words
        .codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                case '\n' -> safe.append('\n');
                default -> {
                  boolean allowed =
                      c >= 0x20 && c != 0xFFFE && c != 0xFFFF && !(c >= 0xD800 && c <= 0xDFFF);
                  safe.appendCodePoint(allowed ? c : ' ');
                }
              }
            });
    return safe.toString();
  }
}
