package org.loomwright.drawing.ink;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Texts of drawings as a browser sets them: which lie on one another, and which leave their
 * drawing. Boxes are those of the ink of a line of text, turned as the text is turned. What a
 * drawing within a drawing cuts off altogether is left out.
 *
 * @param count lines of text seen, so that a test can tell that it saw any
 * @param overlaps pairs that share some area
 * @param outside lines that leave the view box of their drawing
 */
public record RenderedTexts(int count, List<Overlap> overlaps, List<Outside> outside) {
  private static final List<String> BROWSERS = List.of("chromium", "chromium-browser");
  private static final long PATIENCE_S = 180;

  public RenderedTexts {
    overlaps = List.copyOf(overlaps);
    outside = List.copyOf(outside);
  }

  /**
   * Two lines of text of one drawing.
   *
   * @param drawing index of the drawing, from 0
   */
  public record Overlap(int drawing, String one, String other) {}

  /**
   * A line of text beyond the edge.
   *
   * @param drawing index of the drawing, from 0
   */
  public record Outside(int drawing, String words) {}

  /** Fails with all that is wrong; also when there is no text at all. */
  public void areSound() {
    assertThat(count).as("lines of text seen by the browser").isPositive();
    assertThat(overlaps).as("text over text").isEmpty();
    assertThat(outside).as("text outside its drawing").isEmpty();
  }

  /** Looks at drawings, all in one start of the browser. */
  public static RenderedTexts of(List<String> svgs) {
    StringBuilder page = new StringBuilder("<!DOCTYPE html>\n<meta charset=\"utf-8\">\n<body>\n");
    for (String svg : svgs) {
      page.append("<div>").append(svg.substring(svg.indexOf("<svg"))).append("</div>\n");
    }
    return ofPage(page.toString(), 1280);
  }

  /**
   * Looks at all drawings of a whole page.
   *
   * @param html the page; numbers of drawings count its outermost svg elements
   * @param widthPx width of the window
   */
  public static RenderedTexts ofPage(String html, int widthPx) {
    Path folder = folder();
    try {
      Path page = folder.resolve("page.html");
      Path answer = folder.resolve("answer.html");
      Files.writeString(page, html + "\n<script>\n" + script() + "\n</script>\n");
      Process process =
          new ProcessBuilder(
                  browser(),
                  "--headless",
                  "--no-sandbox",
                  "--disable-gpu",
                  "--no-first-run",
                  "--user-data-dir=" + folder.resolve("profile"),
                  "--window-size=" + widthPx + ",900",
                  "--dump-dom",
                  page.toUri().toString())
              .redirectOutput(answer.toFile())
              .redirectError(ProcessBuilder.Redirect.DISCARD)
              .start();
      if (!process.waitFor(PATIENCE_S, TimeUnit.SECONDS)) {
        process.destroyForcibly();
        throw new AssertionError("the browser did not end within " + PATIENCE_S + " s");
      }
      return read(Files.readString(answer));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    } finally {
      remove(folder);
    }
  }

  private static RenderedTexts read(String dom) {
    String head = "<pre id=\"rendered-texts\">";
    int from = dom.indexOf(head);
    assertThat(from).as("the browser's answer: %s", dom).isNotNegative();
    int count = -1;
    List<Overlap> overlaps = new ArrayList<>();
    List<Outside> outside = new ArrayList<>();
    String lines = dom.substring(from + head.length(), dom.indexOf("</pre>", from));
    for (String line : lines.lines().toList()) {
      List<String> words =
          Stream.of(line.split(" ", -1))
              .map(word -> URLDecoder.decode(word, StandardCharsets.UTF_8))
              .toList();
      switch (words.get(0)) {
        case "count" -> count = Integer.parseInt(words.get(1));
        case "overlap" ->
            overlaps.add(new Overlap(Integer.parseInt(words.get(1)), words.get(2), words.get(3)));
        case "outside" -> outside.add(new Outside(Integer.parseInt(words.get(1)), words.get(2)));
        default -> throw new AssertionError("the browser's answer has a line " + line);
      }
    }
    assertThat(count).as("the browser's answer has no count: %s", lines).isNotNegative();
    return new RenderedTexts(count, overlaps, outside);
  }

  private static String browser() {
    for (String name : BROWSERS) {
      for (String folder : System.getenv("PATH").split(java.io.File.pathSeparator, -1)) {
        if (Files.isExecutable(Path.of(folder, name))) {
          return name;
        }
      }
    }
    throw new AssertionError(
        String.format(Locale.ROOT, "no browser on the path; install one of %s", BROWSERS));
  }

  private static String script() throws IOException {
    try (InputStream in = RenderedTexts.class.getResourceAsStream("rendered-texts.js")) {
      if (in == null) {
        throw new IOException("rendered-texts.js is missing from the tests' resources");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static Path folder() {
    try {
      return Files.createTempDirectory("rendered-texts");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void remove(Path folder) {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path path : all.sorted(java.util.Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(path);
      }
    } catch (IOException | UncheckedIOException e) {
      // The browser may still be writing its profile; what is left lies in the folder for
      // temporary files and harms no test.
      folder.toFile().deleteOnExit();
    }
  }
}
