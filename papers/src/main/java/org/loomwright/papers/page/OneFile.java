package org.loomwright.papers.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * One HTML file that needs nothing else: style, script and data are inside, and its own policy
 * forbids it to ask for anything.
 *
 * <p>The file shows a warning that only its own intact script takes away. A browser refuses a
 * script that differs by one byte, as the policy names its hash (W3C Content Security Policy Level
 * 3, 2.3.1); the script refuses data that differ, as it holds their length and SHA-256; and it
 * waits for the file's last element, so that a file that was cut off does nothing either. All of it
 * is plain ASCII, which no mail program changes.
 *
 * <p>The script gets its data by {@code whenWhole(function (data) {...})}, which is called only
 * when all is as it was made.
 *
 * @param title title of the page
 * @param style style sheet
 * @param script parts of the script, in order; they have one scope of their own
 * @param data the data as JSON text
 * @param body what stands in the page until the script changes it, the warning included; markup
 */
public record OneFile(String title, String style, List<String> script, String data, String body) {
  public OneFile {
    script = List.copyOf(script);
  }

  /** The whole file. */
  public String text() {
    String carried = escaped(data);
    String run = run(carried);
    return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
        + "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; script-src '"
        + hash(run)
        + "'; style-src '"
        + hash(style)
        + "'; base-uri 'none'; form-action 'none'\">\n"
        + "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
        + "<meta name=\"color-scheme\" content=\"light dark\">\n"
        + "<meta name=\"format-detection\" content=\"telephone=no\">\n<title>"
        + references(Html.escape(title))
        + "</title>\n<style>"
        + style
        + "</style>\n</head>\n<body>\n"
        + body
        + "\n<script type=\"application/json\" id=\"data\">"
        + carried
        + "</script>\n<script>"
        + run
        + "</script>\n<p id=\"end\" hidden></p>\n</body>\n</html>\n";
  }

  private String run(String carried) {
    return "(function () {\n'use strict';\nvar SUM = {length: "
        + carried.length()
        + ", sha: '"
        + sha256(carried)
        + "'};\n"
        + resource(OneFile.class, "sha256.js")
        + "\n"
        + resource(OneFile.class, "whole.js")
        + "\n"
        + String.join("\n", script)
        + "\n}());\n";
  }

  /** SHA-256 (FIPS 180-4) of a text in UTF-8, as hexadecimal digits in lower case. */
  public static String sha256(String text) {
    return HexFormat.of().formatHex(digest(text));
  }

  /** A text that lies beside a class of this program. */
  public static String resource(Class<?> beside, String name) {
    try (InputStream in = beside.getResourceAsStream(name)) {
      if (in == null) {
        throw new IOException("the part " + name + " of a page is missing from this program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static byte[] digest(String text) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  /** As a policy names it. */
  private static String hash(String text) {
    return "sha256-" + Base64.getEncoder().encodeToString(digest(text));
  }

  /** JSON text that can't end the element it stands in, all that is not ASCII as escapes. */
  private static String escaped(String json) {
    return plain(json.chars(), c -> String.format(Locale.ROOT, "\\u%04x", c))
        .replace("<", "\\u003c");
  }

  /** Markup with all that is not ASCII written as references. */
  private static String references(String markup) {
    return plain(markup.codePoints(), c -> "&#" + c + ";");
  }

  private static String plain(IntStream characters, IntFunction<String> otherwise) {
    return characters
        .mapToObj(c -> c < 0x7F ? Character.toString(c) : otherwise.apply(c))
        .collect(Collectors.joining());
  }
}
