package org.loomwright.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.URI;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Runs the usual commands once, so that Java can write an archive of the classes they need. The
 * launcher starts this after a build; whether the commands end well does not matter here.
 */
public final class Rehearsal {

  private static final Pattern ADDRESS = Pattern.compile("http://[0-9.:]+/");

  /** The last kit page is asked for twice, since the first answer may come before its plan. */
  private static final List<String> PAGES =
      List.of(
          "",
          "vehicle/packer",
          "sums/resistance",
          "search?q=F7",
          "kit/crew-comfort/gap",
          "kit/crew-comfort/leads",
          "kit/crew-comfort/sums",
          "kit/crew-comfort/gap");

  private static final int MOST_WAITS = 300;
  private static final int WAIT_MS = 100;

  private Rehearsal() {}

  /**
   * Runs them all.
   *
   * @param args one word: the folder for the pack of the demo
   */
  public static void main(String[] args) {
    List<List<String>> commands =
        List.of(
            List.of("--help"),
            List.of("sum", "--help"),
            sum("ampacity --wire 14AWG --insulation-rating 105C --ambient 60C"),
            sum(
                "gauge --current 9A --length 4m --supply 12V --max-drop 3% --ambient 40C"
                    + " --insulation-rating 105C --json"),
            sum("withstand --wire 2.5mm2 --insulation XLPE --time 1s"),
            sum(
                "fuse --continuous 9A --peak 9A --peak-time 1s --wire 2.5mm2 --length 4m"
                    + " --ambient 40C --supply 12V --json"),
            sum("drop --wire 2.5mm2 --length 4m --current 9A --supply 12V --temperature wrong"),
            List.of("demo", "--no-serve", "--out", args[0]));
    try (PrintWriter nobody = new PrintWriter(PrintWriter.nullWriter())) {
      commands.forEach(words -> Main.run(nobody, nobody, words.toArray(String[]::new)));
      store(nobody, args[0]);
      pages(nobody, args[0]);
    }
  }

  /** Takes the demo into a store of its own in the folder, and out again. */
  private static void store(PrintWriter nobody, String folder) {
    String demo = System.getProperty("loomwright.home", ".") + "/demo";
    Main.run(nobody, nobody, "import", demo, "--db", folder + "/shop.db");
    Main.run(nobody, nobody, "export", folder + "/shop.zip", "--db", folder + "/shop.db");
  }

  /** Opens the pages of the demo, loads some of each sort, and stops them. */
  private static void pages(PrintWriter nobody, String folder) {
    StringWriter said = new StringWriter();
    Thread serve =
        new Thread(
            () ->
                Main.run(
                    new PrintWriter(said, true),
                    nobody,
                    "serve",
                    "--port",
                    "0",
                    "--db",
                    folder + "/shop.db"),
            "serve");
    serve.start();
    try {
      Matcher address = ADDRESS.matcher("");
      for (int i = 0; i < MOST_WAITS && serve.isAlive() && !address.find(); i++) {
        Thread.sleep(WAIT_MS);
        address = ADDRESS.matcher(said.toString());
      }
      if (address.reset().find()) {
        for (String page : PAGES) {
          load(URI.create(address.group() + page));
        }
      }
      serve.interrupt();
      serve.join();
    } catch (IOException noPage) {
      serve.interrupt();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }

  private static void load(URI page) throws IOException {
    try (InputStream answer = page.toURL().openStream()) {
      answer.readAllBytes();
    }
  }

  private static List<String> sum(String words) {
    return List.of(("sum " + words).split(" ", -1));
  }
}
