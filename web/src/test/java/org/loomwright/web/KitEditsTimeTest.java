package org.loomwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.quantity.Display;
import org.loomwright.model.workspace.KitOrders;
import org.loomwright.model.workspace.NamedText;
import org.loomwright.model.workspace.Read;
import org.loomwright.model.workspace.WorkspaceReader;
import org.loomwright.web.shop.KitPages;
import org.loomwright.web.shop.PlanDesk;
import org.loomwright.web.shop.Planned;
import org.loomwright.web.shop.ShopSource;
import org.loomwright.web.shop.Stage;

/**
 * How long it takes from a change of the documents to the page with the new plan. The times are
 * printed; what is asserted is that the pages are right. {@code -Dloomwright.edits=200} makes 200
 * changes.
 */
class KitEditsTimeTest {
  private static final String KIT = "crew-comfort";
  private static final int EDITS = Integer.getInteger("loomwright.edits", 20);

  /** Changes before the first that is measured, until the program is warm. */
  private static final int WARM_UP = Math.min(20, EDITS / 2);

  private static final String TOWING =
      """
              {"id": "no", "words": "not prepared for towing", "share": "76 %"},
              {"id": "yes", "words": "prepared for towing", "share": "24 %"}
      """;

  private static final int CHECKED_EACH = 10;

  /** Documents that the test changes in place. */
  private static final class Desk implements ShopSource {
    private final Map<String, String> before = new LinkedHashMap<>();
    private final Map<String, byte[]> pictures = new LinkedHashMap<>();
    private volatile List<NamedText> texts = List.of();

    Desk() throws IOException {
      try (Stream<Path> files = Files.list(Path.of("..", "demo"))) {
        for (Path file : files.sorted().toList()) {
          String name = file.getFileName().toString();
          if (name.endsWith(".json")) {
            before.put(name, Files.readString(file, StandardCharsets.UTF_8));
          } else if (name.endsWith(".png")) {
            pictures.put(name, Files.readAllBytes(file));
          }
        }
      }
      texts = texts(before);
    }

    private static List<NamedText> texts(Map<String, String> all) {
      List<NamedText> list = new ArrayList<>();
      all.forEach((name, text) -> list.add(new NamedText(name, text)));
      return List.copyOf(list);
    }

    /** Puts one change into the demo as it was; the kit's name tells which. */
    void change(String file, String from, String to, String name) {
      Map<String, String> now = new LinkedHashMap<>(before);
      now.computeIfPresent(file, (it, text) -> replaced(text, from, to));
      now.computeIfPresent(
          KIT + ".kit.json",
          (it, text) ->
              replaced(text, "Rear-cabin heater and powered side steps for the panel van", name));
      texts = texts(now);
    }

    private static String replaced(String text, String from, String to) {
      assertThat(text).contains(from);
      return text.replace(from, to);
    }

    @Override
    public String where() {
      return "changed by the test";
    }

    @Override
    public Read read() {
      return WorkspaceReader.read(texts, pictures);
    }

    @Override
    public Object state() {
      return texts;
    }

    KitOrder order() {
      Read.Good good = (Read.Good) read();
      return ((KitOrders.Found) KitOrders.resolve(good.workspace(), KIT)).order();
    }
  }

  private static void edit(Desk desk, int number) {
    String name = "edit " + number + " of the kit";
    switch (number % 6) {
      case 0 ->
          desk.change(
              "van.vehicle.json",
              "\"length\": \"1900 mm\"",
              "\"length\": \"" + (1905 + number) + " mm\"",
              name);
      case 1 ->
          desk.change(
              "heater.equipment.json",
              "\"12.5 A\"",
              String.format(Locale.ROOT, "\"%.2f A\"", 10 + 0.01 * number),
              name);
      case 2 ->
          desk.change(
              "van.vehicle.json",
              TOWING,
              TOWING
                  .replace("76 %", String.format(Locale.ROOT, "%.2f %%", 60 + 0.01 * number))
                  .replace("24 %", String.format(Locale.ROOT, "%.2f %%", 40 - 0.01 * number)),
              name);
      case 3 ->
          desk.change(
              KIT + ".kit.json",
              "\"parts\": [\"bench-stock\"],",
              "\"parts\": [\"bench-stock\"], \"wishes\": [{\"wish\": \"forbid\", \"way\":"
                  + " \"heater/main/1 > slot rear-block F8\", \"reason\": \"try "
                  + number
                  + "\"}],",
              name);
      case 4 ->
          desk.change(
              "side-steps.equipment.json",
              "\"continuous\": \"3 A\"",
              String.format(Locale.ROOT, "\"continuous\": \"%.3f A\"", 2 + 0.001 * number),
              name);
      default ->
          desk.change(
              "van.vehicle.json",
              "\"length\": \"1250 mm\"",
              "\"length\": \"" + (1100 + number) + " mm\"",
              name);
    }
  }

  @Test
  void aChangeShowsOnThePageOfTheKit() throws IOException, PortTakenException {
    Desk desk = new Desk();
    double[] timesMs = new double[EDITS];
    try (Pages pages = Pages.open(desk, 0);
        PlanDesk other = new PlanDesk()) {
      Browser browser = new Browser(pages);
      assertThat(browser.planned("/kit/" + KIT + "/gap")).contains("released");
      for (int i = -WARM_UP; i < EDITS; i++) {
        Stage stage = Stage.values()[Math.floorMod(i, Stage.values().length)];
        edit(desk, i + WARM_UP);
        long startNs = System.nanoTime();
        String page = shown(browser, stage);
        double tookMs = (System.nanoTime() - startNs) / 1e6;
        if (i >= 0) {
          timesMs[i] = tookMs;
        }
        assertThat(page).contains("<h1>edit " + (i + WARM_UP) + " of the kit");
        assertThat(page).contains(" released");
        if (Math.floorMod(i, CHECKED_EACH) == 0) {
          markup(other, desk.order(), stage).forEach(part -> assertThat(page).contains(part));
        }
      }
    }
    Arrays.sort(timesMs);
    System.out.printf(
        Locale.ROOT,
        "%d changes until the page shows the new plan: median %.0f ms, 95 %% within %.0f ms, all"
            + " within %.0f ms%n",
        EDITS,
        timesMs[EDITS / 2],
        timesMs[(int) Math.ceil(0.95 * EDITS) - 1],
        timesMs[EDITS - 1]);
  }

  private static String shown(Browser browser, Stage stage) {
    for (int i = 0; i < 1000; i++) {
      HttpResponse<String> answer = browser.get("/kit/" + KIT + "/" + stage.key());
      assertThat(answer.statusCode()).isEqualTo(200);
      if (!answer.body().contains("Being planned")) {
        return answer.body();
      }
    }
    throw new AssertionError("never planned");
  }

  private static List<String> markup(PlanDesk desk, KitOrder order, Stage stage) {
    Planned planned = desk.soon(order, Duration.ofMinutes(2));
    assertThat(planned).isInstanceOf(Planned.Done.class);
    return ((Planned.Done) planned)
        .pages().of(stage, Display.METRIC).stream().map(KitPages.Part::markup).toList();
  }
}
