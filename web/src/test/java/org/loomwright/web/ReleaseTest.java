package org.loomwright.web;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.model.design.Verdict;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Pin;
import org.loomwright.store.Release;

/** A kit goes out only as it was proven, and its pack stays what it was. */
class ReleaseTest {
  private static final String PAGE = "/kit/crew-comfort/release";

  @TempDir private Path folder;

  @Test
  void aReleaseKeepsItsRevisionsAndItsPack() throws IOException {
    try (DemoStore demo = DemoStore.in(folder)) {
      Browser browser = new Browser(demo.pages());
      browser.planned("/kit/crew-comfort/gap");
      Markup.elements(browser.get(PAGE).body());
      assertThat(browser.post(PAGE, "why=first").statusCode()).isEqualTo(422);
      boolean marginal = browser.get(PAGE).body().contains("with a named reason");
      if (marginal) {
        HttpResponse<String> noReason = browser.post(PAGE, "who=Anna&why=");
        assertThat(noReason.statusCode()).isEqualTo(422);
        assertThat(noReason.body()).contains("say below why");
      }
      assertThat(demo.store().releases().all()).isEmpty();

      HttpResponse<String> done = browser.post(PAGE, "who=Anna&why=first+batch");
      assertThat(done.statusCode()).isEqualTo(303);
      Release release = demo.store().releases().of("crew-comfort").get(0);
      assertThat(release.verdict()).isEqualTo(marginal ? Verdict.MARGINAL : Verdict.HOLDS);
      assertThat(release.pins().stream().map(it -> it.pin()))
          .contains(new Pin(DemoStore.VAN, 1), new Pin(new DocumentKey("rules", "shop-rules"), 1))
          .hasSize(6);
      byte[] before = browser.bytes(PAGE + "/1/pack.zip").body();
      assertThat(names(before))
          .contains("pack.pdf", "result.json", "cut-list.xlsx", "fit-check.html");
      assertThat(demo.store().releases().file("crew-comfort", 1, "guide.html"))
          .hasValueSatisfying(it -> assertThat(new String(it, UTF_8)).contains("\"release\":1,"));
      for (String name : List.of("guide", "fit-check")) {
        HttpResponse<String> file = browser.get("/kit/crew-comfort/" + name + ".html");
        assertThat(file.statusCode()).isEqualTo(200);
        assertThat(file.headers().firstValue("Content-Disposition"))
            .contains("attachment; filename=\"crew-comfort-" + name + ".html\"");
        assertThat(file.body()).contains("Rear-cabin heater").doesNotContain("\"release\"");
      }

      demo.edit(DemoStore.VAN, "Ostveld Packer", "Ostveld Parcel", "Ben");
      browser.planned("/kit/crew-comfort/gap");
      assertThat(browser.bytes(PAGE + "/1/pack.zip").body()).isEqualTo(before);
      assertThat(browser.get(PAGE).body())
          .contains(
              "by Anna: first batch", "vehicle &#39;packer&#39; revision 1".replace("&#39;", "'"));
    }
  }

  @Test
  void aKitWithAFailingCheckIsNotReleased() {
    try (DemoStore demo = DemoStore.in(folder)) {
      demo.edit(
          DemoStore.VAN, "\"supplyLowest\": \"11.8 V\"", "\"supplyLowest\": \"9.1 V\"", "Ben");
      Browser browser = new Browser(demo.pages());
      assertThat(browser.planned("/kit/crew-comfort/proof")).contains("can't be released");
      HttpResponse<String> refused = browser.post(PAGE, "who=Anna&why=never+mind");
      assertThat(refused.statusCode()).isEqualTo(422);
      assertThat(refused.body()).contains("The kit can't be released");
      assertThat(demo.store().releases().all()).isEmpty();
    }
  }

  private static List<String> names(byte[] zip) throws IOException {
    List<String> names = new ArrayList<>();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(zip))) {
      for (ZipEntry it = in.getNextEntry(); it != null; it = in.getNextEntry()) {
        names.add(it.getName());
      }
    }
    return names;
  }
}
