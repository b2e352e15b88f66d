package org.loomwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.store.DocumentKey;

/** Findings over the pages. */
class FindingPagesTest {
  private static final String OPEN = "/finding/floor-cavity-wire";
  private static final DocumentKey KEY = new DocumentKey("finding", "floor-cavity-wire");
  private static final String ACCEPTED =
      "\"state\": \"accepted\", \"outcome\": \"done\", \"takenInto\": \"6\"";
  private static final String IMPACT = "/findings/floor-cavity-wire/impact";

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

  private String page(String address) {
    HttpResponse<String> page = browser.get(address);
    assertThat(page.statusCode()).as(address).isEqualTo(200);
    Markup.elements(page.body());
    return page.body();
  }

  private FormOnPage form(String address) {
    return FormOnPage.of(page(address)).with("who", "Anna");
  }

  private HttpResponse<String> send(FormOnPage form) {
    return browser.post(form.action(), form.body());
  }

  private static String next(HttpResponse<String> saved) {
    assertThat(saved.statusCode()).as(saved.body()).isEqualTo(303);
    return saved.headers().firstValue("Location").orElseThrow();
  }

  @Test
  void openOnesComeFirstAndTheListCanBeCutDown() {
    String all = page("/findings");
    assertThat(all.indexOf("A wire in cavity 6"))
        .isPositive()
        .isLessThan(all.indexOf("Lead to the right step"));
    assertThat(page("/findings?vehicle=packer&state=accepted"))
        .contains("Lead to the right step")
        .doesNotContain("A wire in cavity 6");
    assertThat(page("/findings?vehicle=packer&on=floor"))
        .contains("A wire in cavity 6", "only on floor")
        .doesNotContain("Lead to the right step");
    assertThat(page("/findings?vehicle=other")).contains("None of these.");
    assertThat(page("/search?q=violet wire".replace(" ", "+"))).contains(OPEN);
    assertThat(browser.get("/finding/nothing").statusCode()).isEqualTo(404);
    assertThat(browser.get("/findings/nothing/impact").statusCode()).isEqualTo(404);
  }

  @Test
  void pagesOfThingsSayWhatWasFoundOnThem() {
    assertThat(page("/vehicle/packer")).contains("2 findings, 1 open", "/new/finding?vehicle=pack");
    assertThat(page("/vehicle/packer/face/floor")).contains("1 finding, 1 open", "connector+floor");
    assertThat(page("/vehicle/packer/face/rear-block")).contains("No findings", "block+rear-block");
    assertThat(page(OPEN))
        .contains("cavity 6 of the floor connector", "/vehicle/packer/face/floor?cavity=6#cavity-6")
        .contains("glazed van of the parcel round");
    assertThat(page("/finding/step-lead-short"))
        .contains("run from", "Taken into revision 5 of the vehicle", "Open it again");
  }

  @Test
  void aNewOneIsTypedWithWhatIsThereOffered() {
    FormOnPage form = form("/new/finding?vehicle=packer&at=slot+rear-block+F8");
    assertThat(form.get("f.vehicle")).isEqualTo("packer");
    assertThat(form.get("f.at")).isEqualTo("slot rear-block F8");
    assertThat(form.get("f.when")).isEqualTo(LocalDate.now(ZoneId.systemDefault()).toString());
    String markup = page("/new/finding?vehicle=packer&at=slot+rear-block+F8");
    assertThat(markup)
        .contains("type=\"date\"", "value=\"cavity floor 6\"", "value=\"run cross-to-right-step\"")
        .contains("value=\"crew-comfort\"", "One more photo");

    HttpResponse<String> refused =
        send(form.with("f.name", "Slot F8 is empty").with("f.at", "slot rear-block F99"));
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("f.seen-wrong", "f.how-wrong", "Slot F8 is empty");

    FormOnPage good =
        form.with("f.name", "Slot F8 is empty")
            .with("f.seen", "no metal in the slot")
            .with("f.how", "measured")
            .with("f.by", "T. Halvard");
    HttpResponse<String> wrongPlace = send(good.with("f.at", "slot rear-block F99"));
    assertThat(wrongPlace.body()).contains("f.at-wrong");
    String next = next(send(good));
    assertThat(next).isEqualTo("/finding/slot-f8-is-empty?done=finding.slot-f8-is-empty.1");
    assertThat(page(next)).contains("no metal in the slot", "slot F8 of", ">open<");
    assertThat(page("/vehicle/packer/face/rear-block")).contains("1 finding, 1 open");
  }

  @Test
  void photosAreThoseOfTheWorkspace() {
    FormOnPage edit = form("/edit/finding/floor-cavity-wire");
    HttpResponse<String> more = browser.post(edit.action(), edit.body() + "&row=more:f.photos");
    FormOnPage row = FormOnPage.of(more.body()).with("who", "Anna");
    HttpResponse<String> refused = send(row.with("f.photos.0.file", "not-there.png"));
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("there is no picture");
    String next =
        next(
            send(
                row.with("f.photos.0.file", "rear-block-wire-side.png")
                    .with("f.photos.0.shows", "the block from behind")));
    assertThat(page(next))
        .contains("src=\"data:image/png;base64,", "alt=\"the block from behind\"");
  }

  @Test
  void decidingTakesAnOutcome() {
    FormOnPage form = form(OPEN);
    HttpResponse<String> refused = browser.post(form.action(), form.body() + "&state=set-aside");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("says why nothing follows from it", "#outcome");
    HttpResponse<String> nobody =
        browser.post(form.action(), "basedOn=1&who=&outcome=seen+twice&state=set-aside");
    assertThat(nobody.statusCode()).isEqualTo(422);
    assertThat(nobody.body()).contains("write your name", "seen twice");

    FormOnPage decided = form.with("outcome", "one van, rewired by its owner");
    String next = next(browser.post(decided.action(), decided.body() + "&state=set-aside"));
    assertThat(page(next)).contains(">set aside<", "rewired by its owner", ">Undo<");
    assertThat(page("/history/finding/floor-cavity-wire")).contains("Revision 2");

    String open = next(browser.post(OPEN + "/decide", "basedOn=2&who=Anna&state=open"));
    assertThat(page(open)).contains(">open<", "Decided before", "rewired by its owner");

    FormOnPage accepted = form(OPEN).with("outcome", "circuit added").with("takenInto", "6");
    String last = next(browser.post(accepted.action(), accepted.body() + "&state=accepted"));
    assertThat(page(last)).contains(">accepted<", "Taken into revision 6");
    assertThat(browser.post(OPEN + "/decide", "basedOn=4&who=Anna&state=odd").statusCode())
        .isEqualTo(404);
  }

  private String impact(String address) {
    for (int i = 0; i < 1200; i++) {
      String page = page(address);
      if (!page.contains("Being worked out")) {
        return page;
      }
    }
    throw new AssertionError("no end of " + address);
  }

  @Test
  void aChangedVehicleShowsWhichKitsAreTouched() {
    assertThat(page(IMPACT)).contains("Nothing to compare yet");
    demo.edit(DemoStore.VAN, "\"revision\": \"5\"", "\"revision\": \"6\"", "Ben");
    assertThat(impact(IMPACT))
        .contains("Revision was 5, is 6", "Kit crew-comfort", "Kit trailer", "Not touched.");
    demo.edit(DemoStore.VAN, "\"supplyLowest\": \"11.8 V\"", "\"supplyLowest\": \"10.6 V\"", "Ben");
    assertThat(impact(IMPACT)).contains("can't be released; before, it could").contains("worse:");
    // Taken into the second: the change before it is not part of it.
    demo.edit(KEY, "\"state\": \"open\"", ACCEPTED, "Ben");
    assertThat(page(IMPACT)).contains("value=\"1\" selected");
    assertThat(impact(IMPACT + "?from=2")).doesNotContain("Revision was 5, is 6");
  }

  @Test
  void theComparisonCanBeStoppedAndBegunAgain() {
    demo.edit(DemoStore.VAN, "\"revision\": \"5\"", "\"revision\": \"6\"", "Ben");
    page(IMPACT);
    String back = "from=1&back=" + IMPACT;
    assertThat(browser.post(IMPACT + "/stop", back).statusCode()).isEqualTo(303);
    String stopped = page(IMPACT);
    // A quick machine may have been through before the stop came.
    if (!stopped.contains("Not touched.")) {
      assertThat(stopped).contains("<h2>Stopped</h2>");
      assertThat(browser.post(IMPACT + "/again", back).statusCode()).isEqualTo(303);
    }
    assertThat(impact(IMPACT)).contains("Not touched.");
  }
}
