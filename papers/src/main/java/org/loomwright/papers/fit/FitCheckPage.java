package org.loomwright.papers.fit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Locale;
import java.util.zip.CRC32;
import org.loomwright.model.design.Plan;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.planner.fit.FitCheck;

/**
 * The fit check as one HTML file for customers: it holds everything it needs, asks nothing of any
 * network, keeps nothing, and says by itself when it did not arrive whole. The browser only runs
 * the script and style whose sums the file names, and the script only shows data whose sum is
 * right; else the words stay that say so.
 */
public final class FitCheckPage {
  private FitCheckPage() {}

  /**
   * The page.
   *
   * @param order the kit with its documents
   * @param plan its plan
   * @param check its fit check
   * @param verifiedOn number of vehicles the kit was fitted to by this guide and signed for; 0 or
   *     more
   * @return the file's text: ASCII, lines end in a line feed
   */
  public static String text(KitOrder order, Plan plan, FitCheck check, int verifiedOn) {
    if (verifiedOn < 0) {
      throw new IllegalArgumentException("verified on " + verifiedOn + " vehicles");
    }
    String data = FitData.text(order, plan, check, verifiedOn);
    String style = resource("fit-check.css");
    String script = resource("fit-answer.js") + resource("fit-page.js");
    return """
        <!DOCTYPE html>
        <html lang="en">
        <head>
        <meta charset="utf-8">
        <meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src \
        'sha256-%s'; style-src 'sha256-%s'; base-uri 'none'; form-action 'none'">
        <meta name="viewport" content="width=device-width, initial-scale=1">
        <title>Does it fit?</title>
        <style>%s</style>
        </head>
        <body>
        <main id="page">
        <div class="broken" role="alert">
        <h1>This page is not whole</h1>
        <p>The file was damaged on its way, or scripts are turned off in your browser. Turn scripts \
        on, or ask the shop to send the file again. Do not rely on what is left of it.</p>
        </div>
        </main>
        <script type="application/json" id="data" data-sum="%s">%s</script>
        <script>%s</script>
        </body>
        </html>
        """
        .formatted(sha256(script), sha256(style), style, crc32(data), data, script);
  }

  private static String crc32(String ascii) {
    CRC32 crc = new CRC32();
    crc.update(ascii.getBytes(StandardCharsets.US_ASCII));
    return String.format(Locale.ROOT, "%08x", crc.getValue());
  }

  private static String sha256(String text) {
    try {
      return Base64.getEncoder()
          .encodeToString(
              MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  private static String resource(String name) {
    try (InputStream in = FitCheckPage.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks its own file " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
