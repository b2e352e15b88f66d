package org.loomwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.model.json.JsonText;
import org.loomwright.model.workspace.Problem;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Draft;
import org.loomwright.store.Revision;
import org.loomwright.store.Signature;
import org.loomwright.web.shop.Edits;
import tools.jackson.databind.JsonNode;

/** Kits that were made, over the pages. */
class StockTest {
  private static final DocumentKey BATCH = new DocumentKey("batch", "spring");

  private static final DocumentKey AUTUMN = new DocumentKey("batch", "heater-autumn");
  private static final DocumentKey JOB = new DocumentKey("job", "van-0533");

  @TempDir private Path folder;

  @Test
  void batchesAreListedMadeAndFound() {
    try (DemoStore demo = DemoStore.in(folder)) {
      Browser browser = new Browser(demo.pages());
      String stock = browser.get("/stock").body();
      Markup.elements(stock);
      assertThat(stock).contains("Six heater and step kits of autumn", "on the shelf");
      String batch = browser.get("/batch/heater-autumn").body();
      Markup.elements(batch);
      assertThat(batch).contains("CC1-0008", "/job/van-0417", "to the workshop at the old mill");
      assertThat(browser.get("/batch/nothing").statusCode()).isEqualTo(404);
      assertThat(browser.get("/search?q=CC1-0008").body()).contains("/batch/heater-autumn");
      assertThat(browser.get("/search?q=0417").body()).contains("/job/van-0417");

      FormOnPage form =
          FormOnPage.of(browser.get("/new/batch").body())
              .with("who", "Anna")
              .with("f.name", "Spring")
              .with("f.kit", "crew-comfort")
              .with("f.release", "2")
              .with("f.partNumber", "CREW-COMFORT-2")
              .with("f.made", "2026-03-02")
              .with("f.by", "J. Pell")
              .with("f.items~rows", "1")
              .with("f.items.0.serial", "CC2-0001")
              .with("f.items.0.state", "on-the-shelf");
      HttpResponse<String> made = browser.post(form.action(), form.body());
      assertThat(made.statusCode()).as(made.body()).isEqualTo(303);
      String next = made.headers().firstValue("Location").orElseThrow();
      assertThat(next).startsWith("/batch/spring?done=");
      assertThat(browser.get(next).body()).contains("CREW-COMFORT-2", "CC2-0001");
      assertThat(demo.text(BATCH)).contains("\"release\": 2");
    }
  }

  private static Edits.Outcome save(DemoStore demo, String serial, String state) {
    String text =
        demo.text(JOB)
            .replaceFirst("\"state\": \"[a-z-]*\"", "\"state\": \"" + state + "\"")
            .replaceFirst(
                "(\"serial\": \"[^\"]*\",\\s*)?\"answers\"",
                "\"serial\": \"" + serial + "\", \"answers\"");
    return new Edits(demo.store())
        .save(new Draft(JOB, text, new Signature("Anna", "")), demo.number(JOB));
  }

  /**
   * A kit that a job names leaves the shelf with that, and comes back when it was the wrong one.
   */
  @Test
  void aJobTakesItsKitOffTheShelf() {
    try (DemoStore demo = DemoStore.in(folder)) {
      assertThat(save(demo, "CC1-0008", "survey")).isInstanceOf(Edits.Kept.class);
      assertThat(item(demo, "CC1-0008")).isEqualTo("on-the-shelf");
      assertThat(save(demo, "CC1-0008", "under-way")).isInstanceOf(Edits.Kept.class);
      assertThat(item(demo, "CC1-0008")).isEqualTo("fitted van-0533");
      Revision moved = demo.store().documents().newest(AUTUMN).orElseThrow().revision();
      assertThat(moved.by()).isEqualTo(new Signature("Anna", "serial number in job van-0533"));
      assertThat(save(demo, "CC1-0009", "under-way")).isInstanceOf(Edits.Kept.class);
      assertThat(item(demo, "CC1-0008")).isEqualTo("on-the-shelf");
      assertThat(item(demo, "CC1-0009")).isEqualTo("fitted van-0533");
      assertThat(save(demo, "CC1-0005", "under-way")).isInstanceOf(Edits.Kept.class);
      assertThat(item(demo, "CC1-0005")).isEqualTo("fitted van-0533");

      long before = demo.number(AUTUMN);
      assertThat(words(save(demo, "CC1-0006", "under-way"))).contains("is scrapped");
      assertThat(words(save(demo, "CC1-0007", "under-way"))).contains("job 'van-0417' has");
      assertThat(demo.number(AUTUMN)).isEqualTo(before);
    }
  }

  private static String words(Edits.Outcome outcome) {
    assertThat(outcome).isInstanceOf(Edits.Refused.class);
    Problem first = ((Edits.Refused) outcome).problems().get(0);
    assertThat(first.path()).isEqualTo("serial");
    return first.words();
  }

  private static String item(DemoStore demo, String serial) {
    JsonText.Tree tree = (JsonText.Tree) JsonText.parse(demo.text(AUTUMN));
    for (JsonNode it : tree.node().path("items")) {
      if (it.path("serial").asString("").equals(serial)) {
        return (it.path("state").asString("") + " " + it.path("job").asString("")).strip();
      }
    }
    throw new AssertionError(serial);
  }
}
