package org.loomwright.papers.hand;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.loomwright.model.design.Plan;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.papers.page.Html;

/**
 * The guide as one HTML file that needs nothing else: style, script, data and pictures are inside,
 * and its own policy forbids it to ask for anything. It works from a file or a mail attachment,
 * keeps what was answered in the browser, and prints.
 *
 * <p>The file shows a warning that only its own intact script takes away. A browser refuses a
 * script that differs by one byte, as the policy names its hash (W3C Content Security Policy Level
 * 3, 2.3.1); the script refuses data that differ, as it holds their length and SHA-256; and it
 * waits for the file's last element, so that a file that was cut off does nothing either. Script
 * and data are plain ASCII, which no mail program changes.
 */
public final class HandGuide {
  /** Parts of the script, in the order they are put together. */
  private static final List<String> PARTS =
      List.of(
          "sha256.js",
          "conditions.js",
          "numbers.js",
          "way.js",
          "undoing.js",
          "record.js",
          "keeping.js",
          "qr-tables.js",
          "qr.js",
          "elements.js",
          "facts.js",
          "readings.js",
          "questions.js",
          "screens.js",
          "changes.js",
          "paper.js",
          "summary.js",
          "run.js");

  private HandGuide() {}

  /**
   * The whole file.
   *
   * @param order kit with its documents
   * @param plan its plan
   * @param release number of the release; empty for a kit that is not released
   */
  public static String text(KitOrder order, Plan plan, Optional<Integer> release) {
    String data = ascii(HandData.of(order, plan, release).toString()).replace("<", "\\u003c");
    String style = resource("hand.css");
    String script = script(data);
    return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
        + "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; script-src '"
        + hash(script)
        + "'; style-src '"
        + hash(style)
        + "'; img-src data: blob:; base-uri 'none'; form-action 'none'\">\n"
        + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
        + "<meta name=\"color-scheme\" content=\"light dark\">\n"
        + "<meta name=\"format-detection\" content=\"telephone=no\">\n<title>"
        + ascii(Html.escape("Guide: " + order.kit().name()), "&#", ";")
        + "</title>\n<style>"
        + style
        + "</style>\n</head>\n<body>\n"
        + "<div id=\"damaged\" role=\"alert\"><h1>This file is damaged or incomplete: do not"
        + " work from it; ask for a new one.</h1><p>The same is shown where scripts are switched off, as in the preview of a mail"
        + " program: save the file and open it in a browser before you ask.</p></div>\n"
        + "<div id=\"app\" hidden></div>\n<div id=\"paper\" hidden></div>\n"
        + "<script type=\"application/json\" id=\"data\">"
        + data
        + "</script>\n<script>"
        + script
        + "</script>\n<p id=\"end\" hidden></p>\n</body>\n</html>\n";
  }

  private static String script(String data) {
    String parts = PARTS.stream().map(HandGuide::resource).collect(Collectors.joining("\n"));
    return "(function () {\n'use strict';\nvar SUM = {length: "
        + data.length()
        + ", sha: '"
        + GuidePrint.sha256(data)
        + "'};\n"
        + parts
        + "\n}());\n";
  }

  private static String resource(String name) {
    try (InputStream in = HandGuide.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IOException("the part " + name + " of the guide is missing from this program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String hash(String text) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      return "sha256-"
          + Base64.getEncoder()
              .encodeToString(digest.digest(text.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  /** JSON text with all that is not ASCII written as escapes. */
  private static String ascii(String json) {
    StringBuilder out = new StringBuilder(json.length() + 64);
    for (int i = 0; i < json.length(); i++) {
      char c = json.charAt(i);
      if (c < 0x7F) {
        out.append(c);
      } else {
        out.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
      }
    }
    return out.toString();
  }

  private static String ascii(String words, String before, String after) {
    StringBuilder out = new StringBuilder(words.length());
    words
        .codePoints()
        .forEach(
            c -> {
              if (c < 0x7F) {
                out.appendCodePoint(c);
              } else {
                out.append(before).append(c).append(after);
              }
            });
    return out.toString();
  }
}
