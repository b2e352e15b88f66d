package org.loomwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.store.DocumentKey;

/** What happens to a change that a person makes on the pages. */
class SavingTest {
  private static final String TEXT = "/text/vehicle/packer";
  private static final String NAME = "Ostveld Packer, panel van";

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

  private HttpResponse<String> save(String text, long basedOn, String who) {
    return browser.post(
        TEXT,
        "basedOn="
            + basedOn
            + "&back=/vehicle/packer&why=test&who="
            + who
            + "&text="
            + URLEncoder.encode(text, StandardCharsets.UTF_8));
  }

  @Test
  void aChangeIsANewRevisionAndCanBeUndone() {
    String before = demo.text(DemoStore.VAN);
    HttpResponse<String> saved = save(before.replace(NAME, "Ostveld Parcel"), 1, "Anna");
    assertThat(saved.statusCode()).isEqualTo(303);
    String next = saved.headers().firstValue("Location").orElseThrow();
    assertThat(next).isEqualTo("/vehicle/packer?done=vehicle.packer.2");
    assertThat(browser.get(next).body())
        .contains("Saved as revision 2.", ">Undo<", "<h1>Ostveld Parcel");
    assertThat(saved.headers().allValues("Set-Cookie")).anyMatch(it -> it.startsWith("who=Anna;"));

    HttpResponse<String> undone =
        browser.post("/history/vehicle/packer/undo", "number=2&back=/vehicle/packer&who=Anna");
    assertThat(undone.statusCode()).isEqualTo(303);
    assertThat(demo.text(DemoStore.VAN)).isEqualTo(before);
    assertThat(demo.number(DemoStore.VAN)).isEqualTo(3);
    assertThat(browser.get("/history/vehicle/packer").body()).contains("Anna", "Go back to this");
  }

  @Test
  void undoKeepsWhatOthersSavedSince() {
    save(demo.text(DemoStore.VAN).replace(NAME, "Ostveld Parcel"), 1, "Anna");
    demo.edit(DemoStore.VAN, "\"supplyLowest\": \"11.8 V\"", "\"supplyLowest\": \"11.7 V\"", "Ben");
    browser.post("/history/vehicle/packer/undo", "number=2&back=/&who=Anna");
    assertThat(demo.text(DemoStore.VAN)).contains(NAME, "\"supplyLowest\": \"11.7 V\"");
  }

  @Test
  void changesOfDifferentPartsAreMerged() {
    String old = demo.text(DemoStore.VAN);
    demo.edit(DemoStore.VAN, "\"supplyLowest\": \"11.8 V\"", "\"supplyLowest\": \"11.7 V\"", "Ben");
    HttpResponse<String> merged = save(old.replace(NAME, "Ostveld Parcel"), 1, "Anna");
    assertThat(merged.statusCode()).isEqualTo(303);
    assertThat(browser.get(merged.headers().firstValue("Location").orElseThrow()).body())
        .contains("Ben had saved in the meantime; both changes are in it.");
    assertThat(demo.text(DemoStore.VAN)).contains("Ostveld Parcel", "\"supplyLowest\": \"11.7 V\"");
  }

  @Test
  void changesOfTheSamePartAreShownSideBySide() {
    String old = demo.text(DemoStore.VAN);
    demo.edit(DemoStore.VAN, NAME, "Ostveld Carrier", "Ben");
    HttpResponse<String> conflict = save(old.replace(NAME, "Ostveld Parcel"), 1, "Anna");
    assertThat(conflict.statusCode()).isEqualTo(409);
    assertThat(conflict.body()).contains("On file, by Ben", "Ostveld Carrier", "Ostveld Parcel");
    assertThat(demo.text(DemoStore.VAN)).contains("Ostveld Carrier");
  }

  @Test
  void whatWouldBreakAnotherDocumentIsRefusedAndKeptInTheForm() {
    String broken = demo.text(DemoStore.VAN).replace("\"11.8 V\"", "\"11.8 A\"");
    HttpResponse<String> refused = save(broken, 1, "Anna");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("supplyLowest", "11.8 A");
    assertThat(demo.number(DemoStore.VAN)).isEqualTo(1);
    String gone = demo.text(DemoStore.VAN).replace("\"id\": \"step-left\"", "\"id\": \"step-l\"");
    assertThat(save(gone, 1, "Anna").body()).contains("Not saved", "step-left");
  }

  @Test
  void brokenTextIsKeptInTheForm() {
    HttpResponse<String> refused = save("{\"kind\": \"vehicle\", <b>", 1, "Anna");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("Not saved", "line 1", "&lt;b");
    HttpResponse<String> other = save(demo.text(new DocumentKey("kit", "trailer")), 1, "Anna");
    assertThat(other.body()).contains("this is the text of vehicle");
  }

  @Test
  void aSaveNeedsAName() {
    HttpResponse<String> refused = save(demo.text(DemoStore.VAN), 1, "");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("write your name");
  }

  @Test
  void onlyThesePagesCanChangeAnything() {
    HttpResponse<String> other =
        browser.post("/history/vehicle/packer/undo", "number=1", "Origin", "http://elsewhere.test");
    assertThat(other.statusCode()).isEqualTo(403);
    HttpResponse<String> frame = browser.post("/look", "look=dark", "Sec-Fetch-Site", "cross-site");
    assertThat(frame.statusCode()).isEqualTo(403);
  }
}
