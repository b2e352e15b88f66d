package org.loomwright.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.loomwright.web.shop.ShopSource;
import org.loomwright.web.shop.Stage;

/** The pages of the demo, each followed to its last link. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PagesTest {
  private static final Pattern ADDRESS = Pattern.compile("(?i)(https?:)?//[a-z0-9]");

  private final Pages pages = open();
  private final Browser browser = new Browser(pages);
  private final Map<String, HttpResponse<String>> visited = new LinkedHashMap<>();
  private final Map<String, List<Markup.Element>> elements = new HashMap<>();
  private final Set<String> links = new LinkedHashSet<>();

  private static Pages open() {
    try {
      return Pages.open(ShopSource.folder(Path.of("..", "demo")), 0);
    } catch (PortTakenException taken) {
      throw new AssertionError(taken);
    }
  }

  @BeforeAll
  void visitAll() {
    for (String kit : List.of("crew-comfort", "trailer")) {
      assertThat(browser.planned("/kit/" + kit + "/gap")).contains("can be released");
    }
    Deque<String> next = new ArrayDeque<>(List.of("/"));
    while (!next.isEmpty()) {
      String page = next.pop();
      if (visited.containsKey(page)) {
        continue;
      }
      HttpResponse<String> answer = browser.get(page);
      visited.put(page, answer);
      if (!isPage(answer)) {
        continue;
      }
      List<Markup.Element> found = Markup.elements(answer.body());
      elements.put(page, found);
      for (Markup.Element it : found) {
        for (String attribute : List.of("href", "src", "hx-get")) {
          String target = it.get(attribute);
          if (!target.isEmpty() && !target.startsWith("data:")) {
            String full = target.startsWith("#") ? page + target : target;
            links.add(full);
            String bare = full.replaceFirst("#.*", "");
            // Each cavity in each view would be thousands of pages that differ in a mark.
            if (!bare.contains("cavity=") || page.equals("/search?q=F7")) {
              next.add(bare);
            }
          }
        }
      }
      if (next.isEmpty() && !visited.containsKey("/search?q=F7")) {
        next.add("/search?q=F7");
      }
    }
  }

  private static boolean isPage(HttpResponse<String> answer) {
    return answer.headers().firstValue("Content-Type").orElse("").startsWith("text/html")
        && answer.body().startsWith("<!doctype");
  }

  @AfterAll
  void close() {
    pages.close();
  }

  @Test
  void noLinkIsBroken() {
    assertThat(visited).hasSizeGreaterThan(60);
    visited.forEach((page, answer) -> assertThat(answer.statusCode()).as(page).isIn(200, 302));
  }

  @Test
  void everyStageOfBothKitsIsThere() {
    for (String kit : List.of("crew-comfort", "trailer")) {
      for (Stage stage : Stage.values()) {
        assertThat(visited).containsKey("/kit/" + kit + "/" + stage.key());
      }
    }
  }

  @Test
  void linksWithinPagesLeadSomewhere() {
    List<String> lost = new ArrayList<>();
    for (String link : links) {
      int mark = link.indexOf('#');
      String page = mark < 0 ? link : link.substring(0, mark);
      List<Markup.Element> there = elements.get(page);
      if (mark >= 0 && there != null) {
        String id = link.substring(mark + 1);
        if (there.stream().noneMatch(it -> it.get("id").equals(id))) {
          lost.add(link);
        }
      }
    }
    assertThat(lost).isEmpty();
  }

  @Test
  void everyPageHasItsFrame() {
    elements.forEach(
        (page, found) -> {
          assertThat(count(found, "h1")).as(page).isEqualTo(1);
          assertThat(count(found, "main")).as(page).isEqualTo(1);
          assertThat(found.get(0).get("lang")).as(page).isEqualTo("en");
          List<String> ids =
              found.stream().map(it -> it.get("id")).filter(it -> !it.isEmpty()).toList();
          assertThat(ids).as(page).doesNotHaveDuplicates();
          headings(page, found);
        });
  }

  private static void headings(String page, List<Markup.Element> found) {
    int level = 0;
    for (Markup.Element it : found) {
      if (it.tag().matches("h[1-6]")) {
        int next = it.tag().charAt(1) - '0';
        assertThat(next).as(page + " leaves out a heading before " + it).isLessThan(level + 2);
        level = next;
      }
    }
  }

  @Test
  void everyFieldHasALabelAndEveryPictureWords() {
    elements.forEach(
        (page, found) -> {
          Set<String> labelled =
              found.stream()
                  .filter(it -> it.tag().equals("label"))
                  .map(it -> it.get("for"))
                  .collect(Collectors.toSet());
          for (Markup.Element it : found) {
            if (it.tag().equals("input") && !it.get("type").equals("hidden")) {
              assertThat(labelled).as(page).contains(it.get("id"));
            }
            if (it.tag().equals("img")) {
              assertThat(it.attributes()).as(page).containsKey("alt");
            }
            if (it.tag().equals("button")) {
              assertThat(it.within()).as(page + ": a button without a form").contains("form");
            }
          }
        });
  }

  @Test
  void nothingIsAskedOfAnotherMachineAndNothingRunsFromTheMarkup() {
    elements.forEach(
        (page, found) -> {
          for (Markup.Element it : found) {
            assertThat(it.tag()).as(page).isNotIn("style", "iframe", "object");
            it.attributes()
                .forEach(
                    (name, value) -> {
                      assertThat(name).as(page + " " + it.tag()).isNotEqualTo("style");
                      assertThat(name).as(page).doesNotStartWith("on");
                      if (!name.startsWith("xmlns") && !value.startsWith("data:")) {
                        assertThat(ADDRESS.matcher(value).find()).as(page + " " + value).isFalse();
                      }
                    });
            if (it.tag().equals("script")) {
              assertThat(it.get("src")).as(page).matches("/(webjars|assets)/.*[.]js");
            }
          }
        });
    String style = browser.get("/assets/loomwright.css").body();
    assertThat(style).contains(":root").doesNotContain("url(").doesNotContain("@import");
  }

  @Test
  void everyPageForbidsOutsideRequests() {
    visited.forEach(
        (page, answer) ->
            assertThat(answer.headers().firstValue("Content-Security-Policy").orElse(""))
                .as(page)
                .contains("default-src 'none'")
                .contains("script-src 'self'")
                .doesNotContain("unsafe"));
  }

  @Test
  void anotherNameOfThisAddressIsRefused() throws IOException {
    try (java.net.Socket socket = new java.net.Socket("127.0.0.1", pages.port())) {
      socket
          .getOutputStream()
          .write(
              "GET / HTTP/1.1\r\nHost: elsewhere.example\r\nConnection: close\r\n\r\n"
                  .getBytes(java.nio.charset.StandardCharsets.US_ASCII));
      String answer =
          new String(
              socket.getInputStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
      assertThat(answer).startsWith("HTTP/1.1 421").doesNotContain("crew-comfort");
    }
  }

  @Test
  void thePackHoldsTheSameFilesAsTheCommandWrites() throws IOException {
    HttpResponse<byte[]> answer = browser.bytes("/kit/trailer/pack.zip");
    assertThat(answer.statusCode()).isEqualTo(200);
    List<String> names = new ArrayList<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(answer.body()))) {
      for (var it = zip.getNextEntry(); it != null; it = zip.getNextEntry()) {
        names.add(it.getName());
        assertThat(zip.readAllBytes().length).as(it.getName()).isPositive();
      }
    }
    assertThat(names)
        .contains("pack.pdf", "calculations.pdf", "leads.csv", "board.pdf", "result.json");
  }

  @Test
  void unknownPagesAndThingsAreToldInWords() {
    for (String page :
        List.of(
            "/nowhere",
            "/vehicle/none",
            "/vehicle/packer/face/none",
            "/kit/none/gap",
            "/kit/trailer/none",
            "/kit/trailer/sums/100000",
            "/kit/trailer/sums/x",
            "/equipment/none",
            "/parts/none",
            "/rules/none",
            "/sums/none")) {
      HttpResponse<String> answer = browser.get(page);
      assertThat(answer.statusCode()).as(page).isEqualTo(404);
      assertThat(answer.body()).as(page).contains("Not here").contains("There is no such");
      Markup.elements(answer.body());
    }
  }

  @Test
  void searchFindsNamesCircuitsCavitiesAndPartNumbers() {
    assertThat(browser.get("/search?q=floor+connector").body())
        .contains("href=\"/vehicle/packer/face/floor\"");
    assertThat(browser.get("/search?q=heater-feed").body()).contains("#circuit-heater-feed");
    assertThat(browser.get("/search?q=rear-block+F7").body()).contains("cavity=F7#cavity-F7");
    assertThat(browser.get("/search?q=OV-6S").body()).contains("#part-OV-6S");
    assertThat(browser.get("/search?q=zzzz").body()).contains("Nothing holds all of");
    assertThat(browser.get("/search").body()).contains("Type a name");
  }

  @Test
  void pictureListAndWordsOfAFaceAreOfOneView() {
    String fitter = browser.get("/vehicle/packer/face/rear-block?cavity=F7").body();
    String turned =
        browser.get("/vehicle/packer/face/rear-block?side=mating+side&latch=up&cavity=F7").body();
    assertThat(fitter).contains("Looking at the wire side, latch left, as the fitter sees it");
    assertThat(turned).contains("Looking at the mating side, latch up").contains("Slot F7</b>");
    assertThat(position(fitter)).isNotEqualTo(position(turned));
    assertThat(turned)
        .contains("href=\"/vehicle/packer/face/rear-block?side=mating+side&amp;latch");
  }

  private static String position(String page) {
    Matcher words =
        Pattern.compile("class=.position.[^>]*>(.*?)</p>", Pattern.DOTALL).matcher(page);
    assertThat(words.find()).isTrue();
    String text = words.group(1);
    return text.substring(text.lastIndexOf(": "));
  }

  @Test
  void eachFigureUnfoldsItsTrace() {
    String sums = browser.get("/kit/trailer/sums").body();
    assertThat(sums).contains("hx-get=\"/kit/trailer/sums/1\"").contains("<details");
    String trace = browser.get("/kit/trailer/sums/1").body();
    assertThat(trace).contains("id=\"trace\"").contains("<th scope=\"row\">").contains("given");
  }

  @Test
  void theLookIsKeptAndLeadsBackOnlyToOwnPages() {
    HttpResponse<String> dark = browser.post("/look", "look=dark&back=%2Fsums%2Fdrop");
    assertThat(dark.statusCode()).isEqualTo(303);
    assertThat(dark.headers().firstValue("Location").orElse("")).endsWith("/sums/drop");
    assertThat(dark.headers().firstValue("Set-Cookie").orElse("")).startsWith("look=dark;");
    assertThat(browser.get("/", "Cookie", "look=dark").body()).contains("data-look=\"dark\"");
    assertThat(browser.get("/", "Cookie", "look=pink").body()).contains("data-look=\"auto\"");
    for (String away :
        List.of("//elsewhere.example", "https://elsewhere.example", "/\\elsewhere")) {
      String location =
          browser
              .post(
                  "/look",
                  "look=dark&back="
                      + java.net.URLEncoder.encode(away, java.nio.charset.StandardCharsets.UTF_8))
              .headers()
              .firstValue("Location")
              .orElse("");
      assertThat(location).as(away).doesNotContain("elsewhere");
    }
  }

  @Test
  void aTakenPortIsSaid() {
    assertThatThrownBy(() -> Pages.open(ShopSource.folder(Path.of("..", "demo")), pages.port()))
        .isInstanceOf(PortTakenException.class)
        .hasMessageContaining("port " + pages.port() + " is taken");
  }

  private static long count(List<Markup.Element> found, String tag) {
    return found.stream().filter(it -> it.tag().equals(tag)).count();
  }
}
