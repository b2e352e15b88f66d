package org.loomwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.web.shop.ShopSource;

/** Whatever stands in a document stays words on the page. */
class HostileNamesTest {
  private static final String HOSTILE = "<script>alert(1)</script>\\\"'&<b onload=x>${1}";

  @TempDir Path folder;

  @Test
  void wordsOfDocumentsAreNeverMarkup() throws IOException, PortTakenException {
    try (Stream<Path> files = Files.list(Path.of("..", "demo"))) {
      for (Path file : files.toList()) {
        Path copy = folder.resolve(file.getFileName());
        if (file.toString().endsWith(".json")) {
          // Every name, note and question of every document.
          String text =
              Files.readString(file)
                  .replaceAll(
                      "\"(name|note|question|reason|prepare|by|words|follows|unlock)\": \"",
                      java.util.regex.Matcher.quoteReplacement("\"")
                          + "$1"
                          + java.util.regex.Matcher.quoteReplacement("\": \"" + HOSTILE));
          Files.writeString(copy, text);
        } else {
          Files.copy(file, copy);
        }
      }
    }
    try (Pages pages = Pages.open(ShopSource.folder(folder), 0)) {
      Browser browser = new Browser(pages);
      for (String stage : List.of("gap", "ways", "leads", "sums", "guide", "proof", "pack")) {
        sound(named(browser.planned("/kit/trailer/" + stage)));
      }
      for (String page :
          List.of(
              "/",
              "/vehicle/packer",
              "/vehicle/packer/face/rear-block",
              "/vehicle/packer/face/floor?cavity=1",
              "/equipment/trailer-socket",
              "/parts/bench-stock",
              "/rules/shop-rules",
              "/kit/trailer/sums/1",
              "/search?q=alert")) {
        sound(named(browser.get(page).body()));
      }
      String echoed = browser.get("/search?q=%3Cscript%3Ealert(1)%3C/script%3E%22").body();
      sound(echoed);
      sound(browser.get("/sums/drop?wire=%22%3E%3Cscript%3Ealert(1)%3C/script%3E").body());
      sound(browser.get("/nowhere%3Cscript%3E?%22%3E%3Cscript%3E").body());
      sound(
          browser
              .get("/vehicle/packer/face/rear-block?side=%22%3E%3Cb%3E&cavity=%22%3E%3Cb%3E")
              .body());
    }
  }

  /** A page with such names in it: else it would prove nothing. */
  private static String named(String page) {
    assertThat(page).contains("&lt;script&gt;alert(1)&lt;/script&gt;");
    return page;
  }

  private static void sound(String page) {
    assertThat(page).contains("<main").doesNotContain("<script>").doesNotContain("<b onload");
    assertThat(Markup.elements(page).stream().filter(it -> it.tag().equals("script"))).hasSize(1);
  }
}
