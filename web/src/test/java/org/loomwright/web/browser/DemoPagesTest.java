package org.loomwright.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.loomwright.web.Pages;
import org.loomwright.web.PortTakenException;
import org.loomwright.web.shop.ShopSource;
import org.loomwright.web.shop.Stage;
import org.loomwright.web.sum.QuickSum;

/**
 * Pages of the demo, each in light and dark, on a desk and on a phone, and by keyboard. Of faces
 * and sums, which look much alike, some each time and others the next; all with {@code
 * -Dweb.pages=all}.
 */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class DemoPagesTest {
  private final Pages pages = open();
  private final BrowserSession session = BrowserSession.start();

  private static Pages open() {
    try {
      return Pages.open(ShopSource.folder(Path.of("..", "demo")), 0);
    } catch (PortTakenException taken) {
      throw new AssertionError(taken);
    }
  }

  @AfterAll
  void close() {
    session.close();
    pages.close();
  }

  /** Pages by what they are; those of one kind share a window. */
  enum Kind {
    START(99),
    VEHICLE(99),
    FACES(3),
    KITS(6),
    DOCUMENTS(99),
    SUMS(3),
    OTHERS(99);

    private final int most;

    Kind(int most) {
      this.most = most;
    }
  }

  private List<String> paths(Kind kind) {
    return switch (kind) {
      case START -> List.of("/");
      case VEHICLE -> links("/", "/vehicle/");
      case FACES ->
          links("/", "/vehicle/").stream()
              .flatMap(it -> links(it, it + "/face/").stream())
              .toList();
      case KITS ->
          Stream.concat(
                  Stream.of(Stage.values()).map(it -> "/kit/crew-comfort/" + it.key()),
                  // Of the longer kit the pages with most on them.
                  Stream.of(Stage.WAYS, Stage.LEADS).map(it -> "/kit/trailer/" + it.key()))
              .toList();
      case DOCUMENTS ->
          Stream.of("/equipment/", "/parts/", "/rules/")
              .flatMap(it -> links("/", it).stream())
              .toList();
      case SUMS -> Stream.of(QuickSum.values()).map(DemoPagesTest::typed).toList();
      case OTHERS ->
          List.of(
              "/findings",
              "/finding/floor-cavity-wire",
              "/finding/step-lead-short",
              "/stock",
              "/batch/heater-autumn",
              "/vehicle/packer/counts",
              "/search",
              "/search?q=F7",
              "/search?q=zzzz",
              "/sums/resistance",
              "/sums/drop?wire=thick",
              "/kit/trailer/sums/1",
              "/nowhere");
    };
  }

  /** A sum with its own examples typed. */
  private static String typed(QuickSum sum) {
    Map<String, String> fields = new LinkedHashMap<>();
    sum.fields().forEach(it -> fields.put(it.key(), it.example()));
    return "/sums/"
        + sum.key()
        + "?"
        + fields.entrySet().stream()
            .map(it -> it.getKey() + "=" + URLEncoder.encode(it.getValue(), StandardCharsets.UTF_8))
            .collect(Collectors.joining("&"));
  }

  private final Map<String, List<String>> seen = new LinkedHashMap<>();

  private List<String> links(String page, String start) {
    List<String> all =
        seen.computeIfAbsent(
            page,
            it -> {
              try (BrowserWindow window =
                  session.window(pages.address(), Manner.DESK.withoutScript())) {
                List<String> found = new ArrayList<>();
                for (var link : window.go(it).locator("main a[href]").all()) {
                  found.add(String.valueOf(link.getAttribute("href")));
                }
                return found;
              }
            });
    return all.stream()
        .map(it -> it.replaceFirst("[?#].*", ""))
        .filter(it -> it.startsWith(start))
        .distinct()
        .toList();
  }

  @ParameterizedTest
  @EnumSource
  void isAccessibleCalmAndFits(Kind kind) {
    List<String> paths = some(paths(kind), kind.most);
    assertThat(paths).isNotEmpty();
    List<String> faults = new ArrayList<>();
    try (BrowserWindow window = session.window(pages.address(), Manner.DESK)) {
      window.mayFail("/nowhere");
      for (String path : paths) {
        window.page().setViewportSize(Manner.DESK.widthPx(), Manner.DESK.heightPx());
        window.prefer(ColorScheme.LIGHT);
        Page page = window.go(path);
        note(faults, path + " desk", Accessibility.faults(page));
        note(faults, path + " desk", Layout.walkFaults(page));
        window.prefer(ColorScheme.DARK);
        if (kind == Kind.START || kind == Kind.VEHICLE || kind == Kind.OTHERS) {
          // The others are seen dark on the phone, where they hold the same text.
          note(faults, path + " desk, dark", Accessibility.lookFaults(page));
        }
        page.setViewportSize(Manner.PHONE.widthPx(), Manner.PHONE.heightPx());
        // Phones get pictures of their own, so all rules are tried again.
        note(faults, path + " phone, dark", Accessibility.faults(page));
        window.prefer(ColorScheme.LIGHT);
        note(faults, path + " phone", Layout.fitFaults(page));
      }
      faults.addAll(window.troubles());
    }
    assertThat(faults).isEmpty();
  }

  private static List<String> some(List<String> paths, int most) {
    if (paths.size() <= most || "all".equals(System.getProperty("web.pages"))) {
      return paths;
    }
    long seed = System.nanoTime();
    System.out.println("pages seed " + seed);
    List<String> shuffled = new ArrayList<>(paths);
    Collections.shuffle(shuffled, new Random(seed));
    return shuffled.subList(0, most);
  }

  private static void note(List<String> faults, String where, List<String> found) {
    found.forEach(it -> faults.add(where + ": " + it));
  }

  @Test
  void readsWithoutScripts() {
    try (BrowserWindow window = session.window(pages.address(), Manner.PHONE.withoutScript())) {
      Page page = window.go("/sums/resistance");
      page.locator("input[name=wire]").fill("2.5 mm²");
      page.getByText("Work it out").click();
      assertThat(page.url()).contains("wire=2.5");
      window.assertCalm();
    }
  }
}
