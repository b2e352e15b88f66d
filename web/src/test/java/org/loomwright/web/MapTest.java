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

/** What is typed into the form of a vehicle's map, and what becomes of it. */
class MapTest {
  private static final String MAP = "/vehicle/packer/map";

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

  private HttpResponse<String> save(String... fields) {
    StringBuilder form = new StringBuilder("basedOn=1&who=Anna");
    for (int i = 0; i < fields.length; i += 2) {
      form.append('&')
          .append(fields[i])
          .append('=')
          .append(URLEncoder.encode(fields[i + 1], StandardCharsets.UTF_8));
    }
    return browser.post(MAP, form.toString());
  }

  private String why() {
    return demo.store().documents().newest(DemoStore.VAN).orElseThrow().revision().by().why();
  }

  @Test
  void showsPlacesRunsAndWhatCanNotBe() {
    String page = browser.get(MAP).body();
    assertThat(page).contains("Left step", "1\u00a0900\u00a0mm ± 60\u00a0mm", "drawn 1\u00a0230");
    assertThat(page).contains("/edit/vehicle/packer?at=places%2Fleft-step");
    Markup.elements(page);
  }

  @Test
  void aMoveIsANewRevisionWithWords() {
    HttpResponse<String> saved =
        save("place.left-step.along", "2950", "place.left-step.down", "1950 mm");
    assertThat(saved.statusCode()).isEqualTo(303);
    assertThat(demo.text(DemoStore.VAN)).contains("\"along\": \"2950 mm\", \"down\": \"1950 mm\"");
    assertThat(why()).isEqualTo("place left step moved");
  }

  @Test
  void whatIsTheSameIsNotSaved() {
    HttpResponse<String> same =
        save(
            "place.left-step.along",
            "2900",
            "place.left-step.down",
            "195 cm",
            "run.cross-to-left-step.bends",
            "3180 mm, 1700");
    assertThat(same.headers().firstValue("Location").orElseThrow()).contains("same");
    assertThat(demo.number(DemoStore.VAN)).isEqualTo(1);
  }

  @Test
  void spotsOutsideTheViewAndUnreadableOnesAreRefusedAndKept() {
    HttpResponse<String> out = save("place.left-step.along", "4601", "place.left-step.down", "10");
    assertThat(out.statusCode()).isEqualTo(422);
    assertThat(out.body())
        .contains("past the right edge: the view is 4600 mm long", "value=\"4601\"");
    assertThat(save("place.left-step.along", "-5", "place.left-step.down", "10").statusCode())
        .isEqualTo(422);
    assertThat(save("place.left-step.along", "<b>", "place.left-step.down", "10").body())
        .contains("&lt;b");
    assertThat(save("place.left-step.along", "5", "place.left-step.down", "").body())
        .contains("distance from the top edge too");
    assertThat(save("run.cross-to-left-step.bends", "1, 2, 3").body()).contains("a comma");
    assertThat(save("run.cross-to-left-step.bends", "1, 2; 3, 2401").body())
        .contains("past the bottom edge");
    assertThat(demo.number(DemoStore.VAN)).isEqualTo(1);
  }

  @Test
  void movesAreMergedWithAnothersEdit() {
    demo.edit(DemoStore.VAN, "\"supplyLowest\": \"11.8 V\"", "\"supplyLowest\": \"11.7 V\"", "Ben");
    assertThat(save("place.left-step.along", "2950", "place.left-step.down", "1950").statusCode())
        .isEqualTo(303);
    assertThat(demo.text(DemoStore.VAN))
        .contains("\"supplyLowest\": \"11.7 V\"", "\"along\": \"2950 mm\"");
  }

  @Test
  void twoMovesOfTheSamePlaceAreShownSideBySide() {
    save("place.left-step.along", "2950", "place.left-step.down", "1950");
    HttpResponse<String> other =
        save("place.left-step.along", "2960", "place.left-step.down", "1950");
    assertThat(other.statusCode()).isEqualTo(409);
    assertThat(other.body()).contains("2950 mm", "2960 mm");
  }

  @Test
  void bendsCanBeDrawnAnewAndTakenOut() {
    save("run.cross-to-left-step.bends", "", "run.lamp-to-lamp.bends", "4300, 1000; 4300, 900");
    assertThat(demo.text(DemoStore.VAN)).contains("\"4300 mm\", \"down\": \"900 mm\"");
    assertThat(why())
        .isEqualTo(
            "run middle cross member to left step drawn anew; run left rear lamp bay to right rear"
                + " lamp bay drawn anew");
  }

  @Test
  void aPlaceAndARunAreAdded() {
    HttpResponse<String> place =
        save(
            "newPlace.name",
            "the rear floor",
            "newPlace.ambient",
            "45",
            "newPlace.wet",
            "yes",
            "newPlace.along",
            "3800",
            "newPlace.down",
            "1200");
    assertThat(place.statusCode()).isEqualTo(303);
    assertThat(demo.text(DemoStore.VAN))
        .contains("\"id\": \"rear-floor\"", "\"ambient\": \"45 °C\"");
    HttpResponse<String> run =
        browser.post(
            MAP,
            "basedOn=2&who=Anna&newRun.from=rear-floor&newRun.to=rear-bumper&newRun.length=700"
                + "&newRun.tolerance=20&newRun.follows=the+floor&newRun.how=measured");
    assertThat(run.statusCode()).isEqualTo(303);
    assertThat(demo.text(DemoStore.VAN)).contains("\"id\": \"rear-floor-to-rear-bumper\"");
    assertThat(why()).isEqualTo("run rear floor to space behind the rear bumper added");
  }

  @Test
  void aHalfTypedPlaceOrRunIsRefusedWithItsFields() {
    HttpResponse<String> refused =
        save("newPlace.name", "Shelf", "newRun.from", "left-step", "newRun.how", "measured");
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body())
        .contains("value=\"Shelf\"", "highest temperature", "measured along the real path");
    Markup.elements(refused.body());
  }

  @Test
  void thePlanViewGetsAnotherSizeAndThePlacesMoveWithIt() {
    assertThat(browser.get(MAP + "/view").body()).contains("value=\"4600 mm\"");
    HttpResponse<String> refused =
        browser.post(MAP + "/view", "basedOn=1&who=Anna&along=0&down=wide");
    assertThat(refused.statusCode()).isEqualTo(422);
    HttpResponse<String> saved =
        browser.post(MAP + "/view", "basedOn=1&who=Anna&along=9200&down=2400+mm&withPicture=yes");
    assertThat(saved.statusCode()).isEqualTo(303);
    assertThat(demo.text(DemoStore.VAN))
        .contains("\"along\": \"9200 mm\"", "\"along\": \"5800 mm\", \"down\": \"1950 mm\"");
  }
}
