package org.loomwright.web.hand;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.common.BitMatrix;
import com.google.zxing.common.DecoderResult;
import com.google.zxing.qrcode.decoder.Decoder;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.loomwright.papers.hand.HandGuide;
import org.loomwright.web.browser.BrowserSession;
import org.loomwright.web.browser.Manner;

/** The parts of the guide's script, each against something that is right beyond doubt. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PartsTest {
  private final BrowserSession session = BrowserSession.start();
  private final BrowserContext context = session.offline(Manner.PHONE);
  private final Page page = context.newPage();

  @AfterAll
  void close() {
    session.close();
  }

  @BeforeAll
  void load() {
    String parts =
        List.of(
                "/org/loomwright/papers/page/sha256.js",
                "conditions.js",
                "numbers.js",
                "qr-tables.js",
                "qr.js")
            .stream()
            .map(PartsTest::part)
            .reduce("", (a, b) -> a + "\n" + b);
    page.evaluate(
        "(source) => { window.parts = new Function('GUIDE', source + '; return {sha256, truth,"
            + " meets, readNumber, lies, bandWords, qrCode, qrDrawn, qrRoom};')({traits: [\"a\","
            + " \"b\", \"c\"].map(id => ({id, values: [{id: \"x\"}, {id: \"y\"}, {id: \"z\"}]}))});"
            + " }",
        parts);
  }

  private static String part(String name) {
    try (InputStream in = HandGuide.class.getResourceAsStream(name)) {
      if (in == null) {
        throw new AssertionError("no part " + name);
      }
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void sumsOfTextsAreThoseOfThePlatform() throws Exception {
    List<String> texts = new ArrayList<>();
    for (int length = 0; length <= 130; length++) {
      texts.add("a~ Z".repeat(40).substring(0, length));
    }
    List<?> sums = (List<?>) page.evaluate("(texts) => texts.map(parts.sha256)", texts);
    for (int i = 0; i < texts.size(); i++) {
      byte[] digest =
          MessageDigest.getInstance("SHA-256")
              .digest(texts.get(i).getBytes(StandardCharsets.US_ASCII));
      assertThat(sums.get(i)).isEqualTo(HexFormat.of().formatHex(digest));
    }
    // FIPS 180-4's example.
    assertThat(page.evaluate("() => parts.sha256('abc')"))
        .isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      nullValues = "-",
      value = {
        "12.6|V|V|12.6|-",
        " 12,6 |V|V|12.6|-",
        "0,123|V|V|0.123|-",
        "012.50|V|V|12.50|-",
        "12.6 V|V|V|12.6|-",
        "12600 mV|V|V|12.6|-",
        "250|mV|V|0.25|-",
        "0.05|A|mA|50|-",
        "7|mV|V|0.007|-",
        "100|kΩ|Ω|100000|-",
        "0.4 ohm|kΩ|Ω|0.4|-",
        "-0|V|V|0|-",
        "1,234|V|V|-|can be read as",
        "1.2.3|V|V|-|not a number",
        "1,2,3|V|V|-|not a number",
        "1e3|V|V|-|wanted in V",
        "twelve|V|V|-|not a number",
        "12.|V|V|-|not a number",
        ".5|V|V|-|not a number",
        "NaN|V|V|-|not a number",
        "''|V|V|-|Type what",
        "-12.6|V|V|-|swapped",
        "12 A|V|V|-|wanted in V",
        "5 kV|V|V|-|wanted in V",
        "5||kΩ|-|in which unit",
        "40 MΩ|kΩ|kΩ|40000|-",
        "0.5|MΩ|Ω|500000|-",
        "150|Ω|MΩ|0.00015|-",
        "40 Mohm|kΩ|kΩ|40000|-",
        "12.6v|V|V|12.6|-",
        "12600 mv|V|V|12.6|-",
        "20 ma|mA|mA|20|-",
        "0.02 a|mA|mA|20|-",
        "5 MV|V|V|-|wanted in V",
        "999999999|MΩ|kΩ|-|too large",
        "OL|kΩ|kΩ|-|not a number",
        "1234567890123|V|V|-|not a number"
      })
  void numbersAreReadRightOrRefused(
      String typed, String said, String unit, String text, String fault) {
    Map<String, Object> asked = new HashMap<>();
    asked.put("typed", typed);
    asked.put("said", said == null ? "" : said);
    asked.put("unit", unit);
    Map<?, ?> read =
        (Map<?, ?>)
            page.evaluate("it => parts.readNumber(it.typed, it.said, it.unit, false)", asked);
    if (fault == null) {
      assertThat(read.get("text")).isEqualTo(text);
      assertThat(Double.parseDouble(String.valueOf(read.get("value"))))
          .isEqualTo(Double.parseDouble(text));
    } else {
      assertThat(read.containsKey("text")).isFalse();
      assertThat(String.valueOf(read.get("fault"))).contains(fault);
    }
  }

  @Test
  void conditionsHoldAsABruteForceSays() {
    long seed = System.nanoTime();
    System.out.println("conditions seed " + seed);
    Random random = new Random(seed);
    for (int i = 0; i < 300; i++) {
      Object condition = condition(random, 3);
      Map<String, String> known = new HashMap<>();
      for (String trait : List.of("a", "b", "c")) {
        if (random.nextBoolean()) {
          known.put(trait, List.of("x", "y", "z").get(random.nextInt(3)));
        }
      }
      List<Boolean> all = new ArrayList<>();
      for (String a : List.of("x", "y", "z")) {
        for (String b : List.of("x", "y", "z")) {
          for (String c : List.of("x", "y", "z")) {
            Map<String, String> build = Map.of("a", a, "b", b, "c", c);
            if (build.entrySet().containsAll(known.entrySet())) {
              all.add(holds(condition, build));
            }
          }
        }
      }
      Map<String, Object> asked = new HashMap<>();
      asked.put("condition", condition);
      asked.put("build", known);
      assertThat(page.evaluate("it => parts.meets([it.condition], it.build)", asked))
          .as("%s with %s", condition, known)
          .isEqualTo(all.contains(true));
      Object truth = page.evaluate("it => parts.truth(it.condition, it.build)", asked);
      if (truth != null) {
        assertThat(all).as("%s with %s", condition, known).containsOnly((Boolean) truth);
      }
    }
  }

  private static Object condition(Random random, int depth) {
    String trait = List.of("a", "b", "c").get(random.nextInt(3));
    switch (depth == 0 ? random.nextInt(2) : random.nextInt(6)) {
      case 0:
        return List.of("is", trait, List.of("x", "y", "z").get(random.nextInt(3)));
      case 1:
        return List.of("in", trait, random.nextBoolean() ? List.of("x", "z") : List.of("y"));
      case 2:
        return random.nextBoolean();
      case 3:
        return List.of("not", condition(random, depth - 1));
      default:
        List<Object> parts = new ArrayList<>();
        for (int i = 0; i <= random.nextInt(3) + 1; i++) {
          parts.add(condition(random, depth - 1));
        }
        return List.of(random.nextBoolean() ? "all" : "any", parts);
    }
  }

  private static boolean holds(Object condition, Map<String, String> build) {
    if (condition instanceof Boolean always) {
      return always;
    }
    List<?> list = (List<?>) condition;
    return switch (String.valueOf(list.get(0))) {
      case "is" -> list.get(2).equals(build.get(String.valueOf(list.get(1))));
      case "in" -> ((List<?>) list.get(2)).contains(build.get(String.valueOf(list.get(1))));
      case "not" -> !holds(list.get(1), build);
      case "all" -> ((List<?>) list.get(1)).stream().allMatch(it -> holds(it, build));
      default -> ((List<?>) list.get(1)).stream().anyMatch(it -> holds(it, build));
    };
  }

  @Test
  void aReaderReadsCodesOfEverySize() throws Exception {
    for (int version = 1; version <= 40; version++) {
      for (String level : List.of("L", "M")) {
        Map<?, ?> drawn =
            (Map<?, ?>)
                page.evaluate(
                    "it => { let text = ''; const room = parts.qrRoom(it.v, it.l) - (it.v < 10 ? 2 :"
                        + " 3); for (let i = 0; i < room; i++) text += String.fromCharCode(32 + (i *"
                        + " 7 + it.v * 13 + i * i % 11) % 95); return {text, rows: parts.qrDrawn("
                        + "text, it.v, it.l).map(row => row.map(x => x ? '1' : '0').join(''))}; }",
                    Map.of("v", version, "l", level));
        List<?> rows = HandScripts.list(drawn, "rows");
        BitMatrix matrix = new BitMatrix(rows.size());
        for (int y = 0; y < rows.size(); y++) {
          for (int x = 0; x < rows.size(); x++) {
            if (String.valueOf(rows.get(y)).charAt(x) == '1') {
              matrix.set(x, y);
            }
          }
        }
        DecoderResult read = new Decoder().decode(matrix);
        assertThat(read.getText()).as("version %d-%s", version, level).isEqualTo(drawn.get("text"));
        assertThat(read.getErrorsCorrected()).isZero();
      }
    }
    assertThat(page.evaluate("() => parts.qrCode('x'.repeat(2954))")).isNull();
  }
}
