package org.loomwright.web;

import java.io.ByteArrayOutputStream;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Fills and sends the forms of pages as a browser would. */
final class FormPosts {
  private static final String BOUNDARY = "----a-boundary-of-the-test";

  private final List<String[]> fields = new ArrayList<>();

  /** A form with nothing in it. */
  static FormPosts empty() {
    return new FormPosts();
  }

  /** The form of a page with an id, as it stands there. */
  static FormPosts on(String page, String id) {
    FormPosts form = new FormPosts();
    int at = page.indexOf("id=\"" + id + "\"");
    if (at < 0) {
      throw new AssertionError("no form " + id + " in: " + page);
    }
    String html = page.substring(at, page.indexOf("</form>", at));
    Matcher select =
        Pattern.compile(
                "(?s)<select[^>]* name=\"([^\"]+)\".*?</select>|<input ((?:[^>\"]|\"[^\"]*\")*)>")
            .matcher(html);
    while (select.find()) {
      if (select.group(1) != null) {
        Matcher option =
            Pattern.compile("<option value=\"([^\"]*)\" selected").matcher(select.group());
        form.set(select.group(1), option.find() ? plain(option.group(1)) : "");
        continue;
      }
      String input = select.group(2);
      boolean box = input.contains("type=\"checkbox\"");
      if (!box || input.contains(" checked")) {
        form.fields.add(new String[] {value(input, "name"), value(input, "value")});
      }
    }
    return form;
  }

  private static String value(String tag, String name) {
    Matcher it = Pattern.compile("(?:^|\\s)" + name + "=\"([^\"]*)\"").matcher(tag);
    return it.find() ? plain(it.group(1)) : "";
  }

  private static String plain(String text) {
    return text.replace("&#34;", "\"")
        .replace("&quot;", "\"")
        .replace("&#39;", "'")
        .replace("&lt;", "<")
        .replace("&gt;", ">")
        .replace("&amp;", "&");
  }

  /** With one field set, instead of what it held. */
  FormPosts set(String name, String value) {
    fields.removeIf(it -> it[0].equals(name));
    fields.add(new String[] {name, value});
    return this;
  }

  /** With one more value of a field. */
  FormPosts add(String name, String value) {
    fields.add(new String[] {name, value});
    return this;
  }

  /** Without one value of a field. */
  FormPosts without(String name, String value) {
    fields.removeIf(it -> it[0].equals(name) && it[1].equals(value));
    return this;
  }

  /** Value of a field. */
  String get(String name) {
    return fields.stream().filter(it -> it[0].equals(name)).map(it -> it[1]).findFirst().orElse("");
  }

  /** As browsers send a form without files. */
  String encoded() {
    List<String> parts = new ArrayList<>();
    for (String[] it : fields) {
      parts.add(
          URLEncoder.encode(it[0], StandardCharsets.UTF_8)
              + "="
              + URLEncoder.encode(it[1].replace("\n", "\r\n"), StandardCharsets.UTF_8));
    }
    return String.join("&", parts);
  }

  /** Sends it with a file. */
  HttpResponse<String> send(Pages pages, String path, String field, String name, byte[] file) {
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    for (String[] it : fields) {
      body.writeBytes(part("name=\"" + it[0] + "\"", it[1].getBytes(StandardCharsets.UTF_8)));
    }
    body.writeBytes(part("name=\"" + field + "\"; filename=\"" + name + "\"", file));
    body.writeBytes(("--" + BOUNDARY + "--\r\n").getBytes(StandardCharsets.UTF_8));
    HttpRequest request =
        HttpRequest.newBuilder(URI.create(pages.address()).resolve(path))
            .timeout(Duration.ofSeconds(180))
            .header("Accept", "text/html")
            .header("Content-Type", "multipart/form-data; boundary=" + BOUNDARY)
            .POST(HttpRequest.BodyPublishers.ofByteArray(body.toByteArray()))
            .build();
    try {
      return HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofString());
    } catch (java.io.IOException failure) {
      throw new AssertionError(path, failure);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new AssertionError(path, stopped);
    }
  }

  private static byte[] part(String disposition, byte[] content) {
    ByteArrayOutputStream part = new ByteArrayOutputStream();
    part.writeBytes(
        ("--" + BOUNDARY + "\r\nContent-Disposition: form-data; " + disposition + "\r\n\r\n")
            .getBytes(StandardCharsets.UTF_8));
    part.writeBytes(content);
    part.writeBytes("\r\n".getBytes(StandardCharsets.UTF_8));
    return part.toByteArray();
  }
}
