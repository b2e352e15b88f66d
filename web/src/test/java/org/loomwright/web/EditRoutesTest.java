package org.loomwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.store.DocumentKey;

/** Forms for parts of documents, over the pages. */
class EditRoutesTest {
  private static final Pattern LINK = Pattern.compile("href=\"((?:/edit|/add|/remove)/[^\"]*)\"");

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

  private FormOnPage form(String address) {
    HttpResponse<String> page = browser.get(address);
    assertThat(page.statusCode()).as(address).isEqualTo(200);
    return FormOnPage.of(page.body()).with("who", "Anna");
  }

  private HttpResponse<String> send(FormOnPage form) {
    return browser.post(form.action(), form.body());
  }

  private String next(HttpResponse<String> saved) {
    assertThat(saved.statusCode()).as(saved.body()).isEqualTo(303);
    return saved.headers().firstValue("Location").orElseThrow();
  }

  /** Every form that links lead to opens; each kind of form is sent as it stands. */
  @Test
  void everyFormCanBeReachedAndSentUnchanged() {
    Deque<String> open =
        new ArrayDeque<>(
            List.of(
                "/vehicle/packer",
                "/vehicle/packer/face/rear-block",
                "/vehicle/packer/face/floor",
                "/equipment/heater",
                "/parts/bench-stock",
                "/rules/shop-rules",
                "/finding/floor-cavity-wire",
                "/kit/trailer/gap"));
    Set<String> seen = new LinkedHashSet<>();
    Set<String> sorts = new LinkedHashSet<>();
    while (!open.isEmpty()) {
      String address = open.pop();
      HttpResponse<String> page = browser.get(address);
      assertThat(page.statusCode()).as(address).isEqualTo(200);
      Markup.elements(page.body());
      Matcher links = LINK.matcher(page.body());
      while (links.find()) {
        String link = links.group(1).replace("&amp;", "&");
        if (seen.add(link.replaceFirst("[?&]back=.*", ""))) {
          open.add(link);
        }
      }
      String sort = address.replaceAll("~i\\d+|back=.*", "").replaceAll("%2F[^%&]*(?=&|$)", "/x");
      if (address.startsWith("/edit") && sorts.add(sort)) {
        FormOnPage form = FormOnPage.of(page.body()).with("who", "Anna");
        assertThat(next(send(form))).as(address).contains("done=").contains(".same");
      }
    }
    assertThat(seen).hasSizeGreaterThan(300);
    assertThat(demo.number(DemoStore.VAN)).isEqualTo(1);
  }

  @Test
  void aChangeIsSavedAndLeadsBack() {
    FormOnPage form =
        form("/edit/vehicle/packer?at=runs%2Fpillar-to-quarter&back=%2Fvehicle%2Fpacker%23runs");
    String length = form.get("f.length");
    String text = demo.text(DemoStore.VAN);
    String back = next(send(form.with("f.length", " 7 1/2 ft ")));
    assertThat(back).isEqualTo("/vehicle/packer?done=vehicle.packer.2#runs");
    assertThat(demo.text(DemoStore.VAN)).contains("\"length\": \"7 1/2 ft\"");
    assertThat(demo.text(DemoStore.VAN).replace("7 1/2 ft", length)).isEqualTo(text);
  }

  @Test
  void whatIsWrongStandsAtItsFieldAndWhatWasTypedStays() {
    FormOnPage form = form("/edit/vehicle/packer?at=runs%2Fpillar-to-quarter");
    HttpResponse<String> refused =
        send(
            form.with("f.length", "12,5 mm")
                .with("f.follows", "the <b>\"sill\"</b> & more")
                .with("f.tolerance", ""));
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body())
        .contains("Not saved", "href=\"#f.length\"", "id=\"f.length-wrong\"", "12,5 mm")
        .contains("this is needed: a length such as")
        .doesNotContain("<b>");
    FormOnPage again = FormOnPage.of(refused.body());
    assertThat(again.get("f.length")).isEqualTo("12,5 mm");
    assertThat(again.get("f.follows")).isEqualTo("the <b>\"sill\"</b> & more");
    assertThat(demo.number(DemoStore.VAN)).isEqualTo(1);
    Markup.elements(refused.body());
  }

  @Test
  void aSaveNeedsAName() {
    HttpResponse<String> refused = send(form("/edit/vehicle/packer").with("who", ""));
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("write your name");
  }

  @Test
  void somethingNewGetsAnIdFromItsName() {
    FormOnPage form = form("/add/vehicle/packer?to=places");
    next(send(form.with("f.name", "Left ärch, front").with("f.ambient", "60 °C")));
    assertThat(demo.text(DemoStore.VAN)).contains("\"id\": \"left-arch-front\"");
    next(
        send(
            form("/add/vehicle/packer?to=places")
                .with("f.name", "Left arch front")
                .with("f.ambient", "50 °C")));
    assertThat(demo.text(DemoStore.VAN)).contains("\"id\": \"left-arch-front-2\"");
    HttpResponse<String> ask = browser.get("/remove/vehicle/packer?at=places%2Fleft-arch-front-2");
    assertThat(ask.body()).contains("Left arch front", "50 °C");
    next(send(FormOnPage.of(ask.body()).with("who", "Anna")));
    assertThat(demo.text(DemoStore.VAN)).doesNotContain("left-arch-front-2");
  }

  @Test
  void whatIsStillUsedIsNotTakenOut() {
    HttpResponse<String> ask = browser.get("/remove/vehicle/packer?at=connectors%2Fstep-left");
    HttpResponse<String> refused = send(FormOnPage.of(ask.body()).with("who", "Anna"));
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("Not taken out", "step-left", "href=\"/edit/kit/");
    assertThat(demo.number(DemoStore.VAN)).isEqualTo(1);
  }

  @Test
  void rowsAreAddedWithoutLosingWhatWasTyped() {
    FormOnPage form =
        form("/edit/vehicle/packer?at=runs%2Fpillar-to-quarter").with("f.follows", "typed before");
    HttpResponse<String> more = send(form.with("row", "more:f.near"));
    assertThat(more.statusCode()).isEqualTo(200);
    FormOnPage grown = FormOnPage.of(more.body()).with("who", "Anna");
    assertThat(grown.get("f.follows")).isEqualTo("typed before");
    int last = Integer.parseInt(grown.get("f.near~rows")) - 1;
    next(
        send(
            grown
                .with("f.near." + last + ".what", "exhaust")
                .with("f.near." + last + ".distance", "250 mm")));
    assertThat(demo.text(DemoStore.VAN)).contains("250 mm", "typed before");
  }

  @Test
  void peopleWhoEditDifferentItemsGetBoth() {
    FormOnPage mine = form("/edit/vehicle/packer?at=runs%2Fpillar-to-quarter");
    FormOnPage theirs = form("/edit/vehicle/packer").with("who", "Ben");
    next(send(theirs.with("f.supplyLowest", "11.7 V")));
    next(send(mine.with("f.length", "2.22 m")));
    assertThat(demo.text(DemoStore.VAN)).contains("\"2.22 m\"", "\"11.7 V\"");
    assertThat(demo.number(DemoStore.VAN)).isEqualTo(3);
  }

  @Test
  void anItemMovesInItsList() {
    String text = demo.text(DemoStore.VAN);
    String moved =
        next(
            browser.post(
                "/move/vehicle/packer",
                "at=runs%2Fpillar-to-quarter&by=1&basedOn=1&back=/vehicle/packer&who=Anna"));
    assertThat(moved).startsWith("/vehicle/packer?done=vehicle.packer.2");
    assertThat(demo.text(DemoStore.VAN)).isNotEqualTo(text);
    browser.post(
        "/move/vehicle/packer",
        "at=runs%2Fpillar-to-quarter&by=-1&basedOn=2&back=/vehicle/packer&who=Anna");
    assertThat(demo.text(DemoStore.VAN)).isEqualTo(text);
  }

  @Test
  void whatIsNotThereIsSaidToBe() {
    for (String nowhere :
        List.of(
            "/edit/vehicle/packer?at=runs%2Fnone",
            "/edit/vehicle/packer?at=name",
            "/edit/vehicle/none",
            "/edit/job/packer",
            "/add/vehicle/packer?to=name",
            "/add/vehicle/packer?to=%3Cscript%3E",
            "/remove/vehicle/packer?at=name",
            "/remove/vehicle/packer",
            "/new/lamp")) {
      assertThat(browser.get(nowhere).statusCode()).as(nowhere).isEqualTo(404);
    }
    assertThat(browser.post("/edit/vehicle/packer", "basedOn=99&who=Anna").statusCode())
        .isEqualTo(404);
    FormOnPage evil = form("/edit/vehicle/packer?back=%2F%2Felsewhere.test");
    assertThat(evil.get("back")).isEqualTo("/vehicle/packer");
  }

  @Test
  void newDocumentsOfAllKindsCanBeMadeAndUsed() {
    next(send(form("/new/parts").with("f.name", "Second shelf")));
    assertThat(demo.number(new DocumentKey("parts", "second-shelf"))).isEqualTo(1);
    next(
        send(
            form("/new/vehicle")
                .with("f.name", "Alder Courier")
                .with("f.supplyLowest", "11.8 V")
                .with("f.splicePolicy", "crimp")
                .with("f.batteryPlace.name", "battery tray")
                .with("f.batteryPlace.ambient", "80 °C")));
    assertThat(browser.get("/vehicle/alder-courier").statusCode()).isEqualTo(200);
    next(
        send(
            form("/new/rules")
                .with("f.name", "Night shift")
                .with("f.hourlyRate", "60 EUR")
                .with("f.numberCarryCost", "4 EUR")));
    assertThat(demo.text(new DocumentKey("rules", "night-shift")))
        .contains("the shop's own figure");
    next(
        send(
            form("/new/equipment")
                .with("f.name", "Roof fan")
                .with("f.plug.name", "fan plug")
                .with("f.plug.matesWith", "OV-2S")));
    HttpResponse<String> kit =
        send(
            form("/new/kit")
                .with("f.name", "Second heater")
                .with("f.vehicle", "packer")
                .with("f.rules", "night-shift")
                .with("f.parts", "bench-stock")
                .with("f.mounts.0.equipment", "heater")
                .with("f.mounts.0.plug", "main")
                .with("f.mounts.0.connector", "floor"));
    assertThat(next(kit)).startsWith("/kit/second-heater/gap");
    HttpResponse<String> twice =
        send(form("/new/parts").with("f.name", "Another").with("f.id", "second-shelf"));
    assertThat(twice.statusCode()).isEqualTo(422);
    assertThat(twice.body()).contains("already; choose another", "id=\"f.id-wrong\"");
    HttpResponse<String> empty = send(form("/new/vehicle"));
    assertThat(empty.statusCode()).isEqualTo(422);
    assertThat(empty.body()).contains("f.name-wrong", "f.batteryPlace.ambient-wrong");
  }

  @Test
  void theFirstDocumentsOfAnEmptyStore() throws java.io.IOException {
    demo.close();
    Path empty = Files.createDirectories(folder.resolve("empty"));
    demo = DemoStore.emptyIn(empty);
    browser = new Browser(demo.pages());
    next(send(form("/new/parts").with("f.name", "First shelf")));
    assertThat(demo.number(new DocumentKey("parts", "first-shelf"))).isEqualTo(1);
  }
}
