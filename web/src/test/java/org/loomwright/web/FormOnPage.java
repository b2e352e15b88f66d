package org.loomwright.web;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** The large form of a page, filled as it stands there; sent as a browser sends it. */
final class FormOnPage {
  private static final Pattern FORM =
      Pattern.compile(
          "<form action=\"([^\"]*)\" method=\"post\" class=\"form[^>]*>(.*?)</form>",
          Pattern.DOTALL);

  private static final Pattern FIELD =
      Pattern.compile(
          "<input([^>]*)>|<textarea([^>]*)>\n?(.*?)</textarea>|<select([^>]*)>(.*?)</select>",
          Pattern.DOTALL);

  private static final Pattern CHOSEN = Pattern.compile("<option value=\"([^\"]*)\" selected>");
  private static final Pattern FIRST = Pattern.compile("<option value=\"([^\"]*)\"");

  private final String action;
  private final Map<String, String> fields;

  private FormOnPage(String action, Map<String, String> fields) {
    this.action = action;
    this.fields = fields;
  }

  static FormOnPage of(String page) {
    Matcher form = FORM.matcher(page);
    if (!form.find()) {
      throw new AssertionError("no form in " + page);
    }
    Map<String, String> fields = new LinkedHashMap<>();
    Matcher it = FIELD.matcher(form.group(2));
    while (it.find()) {
      if (it.group(1) != null) {
        boolean box = it.group(1).contains("type=\"checkbox\"");
        if (!box || it.group(1).contains(" checked")) {
          fields.put(get(it.group(1), "name"), get(it.group(1), "value"));
        }
      } else if (it.group(2) != null) {
        fields.put(get(it.group(2), "name"), plain(it.group(3)).replace("\n", "\r\n"));
      } else {
        fields.put(get(it.group(4), "name"), chosen(it.group(5)));
      }
    }
    return new FormOnPage(plain(form.group(1)), fields);
  }

  private static String chosen(String options) {
    Matcher chosen = CHOSEN.matcher(options);
    Matcher first = FIRST.matcher(options);
    return chosen.find() ? plain(chosen.group(1)) : first.find() ? plain(first.group(1)) : "";
  }

  private static String get(String attributes, String name) {
    Matcher it = Pattern.compile("(?:^|\\s)" + name + "=\"([^\"]*)\"").matcher(attributes);
    return it.find() ? plain(it.group(1)) : "";
  }

  private static String plain(String markup) {
    return markup
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&#34;", "\"")
        .replace("&#39;", "'")
        .replace("&amp;", "&");
  }

  String action() {
    return action;
  }

  String get(String name) {
    return Optional.ofNullable(fields.get(name))
        .orElseThrow(() -> new AssertionError("no field " + name + " in " + fields.keySet()));
  }

  /** The same with something else in a field. */
  FormOnPage with(String name, String value) {
    Map<String, String> changed = new LinkedHashMap<>(fields);
    changed.put(name, value);
    return new FormOnPage(action, changed);
  }

  String body() {
    return fields.entrySet().stream()
        .map(it -> encoded(it.getKey()) + "=" + encoded(it.getValue()))
        .collect(Collectors.joining("&"));
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
