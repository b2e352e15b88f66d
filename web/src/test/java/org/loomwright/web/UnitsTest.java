package org.loomwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.store.DocumentKey;

/** The switch between millimetres and inches: it shows otherwise and changes nothing. */
class UnitsTest {
  private static final String INCH = "units=inch";
  private static final Pattern LINK = Pattern.compile("href=\"(/edit/[^\"]*)\"");
  private static final List<String> SHOWN =
      List.of(
          "/vehicle/packer",
          "/vehicle/packer/face/rear-block",
          "/equipment/heater",
          "/parts/bench-stock",
          "/rules/shop-rules",
          "/kit/trailer/leads",
          "/kit/trailer/sums",
          "/kit/trailer/guide",
          "/vehicle/packer/map",
          "/sums/drop?wire=2.5+mm%C2%B2&length=4+m&return-length=&current=9+A&supply=12+V"
              + "&temperature=60+%C2%B0C");

  private static final int MOST_FORMS = 12;

  @TempDir private Path folder;
  private DemoStore demo;
  private Browser browser;

  @BeforeEach
  void open() {
    demo = DemoStore.in(folder);
    browser = new Browser(demo.pages());
  }

  @AfterEach
  void close() {
    demo.close();
  }

  private String inch(String path) {
    return browser.get(path, "Cookie", INCH).body();
  }

  @Test
  void theSwitchKeepsWhatWasChosenAndLeadsBack() {
    HttpResponse<String> chosen = browser.post("/units", "units=inch&back=%2Fvehicle%2Fpacker");
    assertThat(chosen.statusCode()).isEqualTo(303);
    assertThat(chosen.headers().firstValue("Location")).hasValue("/vehicle/packer");
    assertThat(chosen.headers().firstValue("Set-Cookie").orElseThrow()).startsWith(INCH + ";");
    assertThat(browser.post("/units", "units=furlong&back=%2F").headers().firstValue("Set-Cookie"))
        .isEmpty();
    assertThat(inch("/")).contains("value=\"inch\" aria-pressed=\"true\"");
    assertThat(browser.get("/", "Cookie", "units=furlong").body())
        .contains("value=\"metric\" aria-pressed=\"true\"");
  }

  /** Whatever was shown in between, metric pages stay the same to the byte. */
  @Test
  void switchingBackAndForthChangesNothing() {
    Map<String, String> before = new LinkedHashMap<>();
    Map<String, String> inches = new LinkedHashMap<>();
    browser.planned("/kit/trailer/leads");
    SHOWN.forEach(it -> before.put(it, browser.get(it).body()));
    SHOWN.forEach(it -> inches.put(it, inch(it)));
    for (int i = 0; i < 2; i++) {
      SHOWN.forEach(it -> assertThat(browser.get(it).body()).isEqualTo(before.get(it)));
      SHOWN.forEach(it -> assertThat(inch(it)).isEqualTo(inches.get(it)));
    }
    inches.values().forEach(Markup::elements);
    assertThat(demo.number(DemoStore.VAN)).isEqualTo(1);
  }

  @Test
  void lengthsAndSizesAreShownInInchesAndGauges() {
    demo.edit(DemoStore.VAN, "\"length\": \"1900 mm\"", "\"length\": \"820 mm\"", "Anna");
    String vehicle = inch("/vehicle/packer");
    assertThat(vehicle).contains("32.28 in", "mm² (nearest ");
    assertThat(vehicle.replaceAll("(?s)<header.*?</header>|class=\"evidence\">.*?</", ""))
        .doesNotContainPattern(">\\d+ mm<");
    assertThat(
            inch(
                "/sums/drop?wire=2.5+mm%C2%B2&length=4+m&return-length=&current=9+A"
                    + "&supply=12+V&temperature=60+%C2%B0C"))
        .contains("157.48 in", "length in inches", "value=\"4 m\"", "value=\"2.5 mm²\"");
    browser.planned("/kit/trailer/leads");
    String leads = inch("/kit/trailer/leads");
    assertThat(leads).contains("Length in", "Cut in").doesNotContain("Length mm", "Cut mm");
  }

  /** Forms are the same under either setting, and sent as they stand they change nothing. */
  @Test
  void formsHoldWhatIsOnFile() {
    List<String> forms = new ArrayList<>();
    for (String page : SHOWN) {
      Matcher links = LINK.matcher(inch(page));
      while (links.find()) {
        forms.add(links.group(1).replace("&amp;", "&"));
      }
    }
    assertThat(new LinkedHashSet<>(forms)).hasSizeGreaterThan(100);
    // Some of them each time, others the next.
    long seed = System.nanoTime();
    System.out.println("forms seed " + seed);
    Collections.shuffle(forms, new Random(seed));
    forms = forms.subList(0, MOST_FORMS);
    List<String> faults = new ArrayList<>();
    for (String form : forms) {
      HttpResponse<String> opened = browser.get(form, "Cookie", INCH);
      assertThat(opened.statusCode()).as(form).isEqualTo(200);
      String shown = opened.body();
      if (!main(shown).equals(main(browser.get(form).body()))) {
        faults.add(form + " differs");
      }
      FormOnPage sent = FormOnPage.of(shown).with("who", "Anna");
      HttpResponse<String> saved = browser.post(sent.action(), sent.body(), "Cookie", INCH);
      if (!saved.headers().firstValue("Location").orElse("").contains(".same")) {
        faults.add(form + " changed something: " + saved.statusCode());
      }
    }
    assertThat(faults).isEmpty();
    for (String kind : List.of("equipment/heater", "parts/bench-stock", "rules/shop-rules")) {
      String[] key = kind.split("/");
      assertThat(demo.number(new DocumentKey(key[0], key[1]))).isEqualTo(1);
    }
    assertThat(demo.number(DemoStore.VAN)).isEqualTo(1);
  }

  private static String main(String page) {
    return page.substring(page.indexOf("<main"), page.indexOf("</main>"));
  }

  /** Papers are metric, whatever is chosen for the pages. */
  @Test
  void thePackIsTheSame() {
    browser.planned("/kit/trailer/pack");
    byte[] metric = browser.bytes("/kit/trailer/pack.zip").body();
    assertThat(browser.bytes("/kit/trailer/pack.zip", "Cookie", INCH).body()).isEqualTo(metric);
  }
}
