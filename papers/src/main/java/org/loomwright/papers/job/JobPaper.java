package org.loomwright.papers.job;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.loomwright.papers.page.Fonts;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.page.PdfFile;

/** What the papers of a job have in common: head, running words, styles. */
final class JobPaper {
  private JobPaper() {}

  /** Job, kit and vehicle, repeated on each page. */
  static void runningWords(Fitted fitted, String title, Html html) {
    html.open("div", "run-kit")
        .words("job " + fitted.job().id() + "\n" + kit(fitted))
        .close("div")
        .line(
            "div",
            "run-vehicle",
            fitted.order().vehicle().name() + " · " + fitted.job().vehicleNote())
        .line("div", "run-section", title);
  }

  /** Kit with revision and release. */
  static String kit(Fitted fitted) {
    return "kit "
        + fitted.order().kit().id()
        + " · revision "
        + fitted.order().kit().revision()
        + fitted.job().release().map(it -> " · release " + it).orElse("");
  }

  /**
   * The file.
   *
   * @param size size of the letters, 1 as usual
   */
  static byte[] pdf(String title, String subject, double size, Html body, Fonts fonts)
      throws IOException {
    String markup =
        "<html lang=\"en\"><head><meta charset=\"UTF-8\"/><title>"
            + Html.escape(title)
            + "</title><meta name=\"subject\" content=\""
            + Html.escape(subject)
            + "\"/><style>"
            + style(Html.class, "pack.css")
            + style(JobPaper.class, "job.css")
            + String.format(
                java.util.Locale.ROOT,
                ".sheet { font-size: %.2fpt; } .sheet table.list { font-size: %.2fpt; }",
                9 * size,
                8.2 * size)
            + "</style></head><body>"
            + body.markup()
            + "</body></html>";
    return PdfFile.of(markup, fonts);
  }

  private static String style(Class<?> beside, String name) {
    try (InputStream in = beside.getResourceAsStream(name)) {
      if (in == null) {
        throw new IOException("the style sheet " + name + " is missing from this program");
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Rows of a name and what there is to say of it. */
  static void fact(Html html, String what, String words) {
    html.open("tr", "").line("td", "what", what).line("td", "", words).close("tr");
  }
}
