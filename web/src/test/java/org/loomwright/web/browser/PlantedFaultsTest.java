package org.loomwright.web.browser;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.microsoft.playwright.Page;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

/** The checks find what is planted, so that their silence on our pages means something. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PlantedFaultsTest {
  private static final String NOWHERE = "http://127.0.0.1:9/";

  private final BrowserSession session = BrowserSession.start();

  @AfterAll
  void close() {
    session.close();
  }

  private static String page(String head, String body) {
    return "<!doctype html><html lang='en'><head><title>A page</title>"
        + "<meta name='viewport' content='width=device-width'><link rel='icon' href='data:,'>"
        + head
        + "</head><body><main><h1>A page</h1>"
        + body
        + "</main></body></html>";
  }

  @Test
  void aSoundPagePasses() {
    try (BrowserWindow window = session.window(NOWHERE, Manner.PHONE)) {
      window
          .page()
          .setContent(page("", "<p>Go <a href='#x'>there</a> now.</p><button>Do</button>"));
      Accessibility.check(window.page());
      Layout.check(window.page());
      window.assertCalm();
    }
  }

  @Test
  void faultyMarkupIsNamedWithItsRule() {
    try (BrowserWindow window = session.window(NOWHERE, Manner.DESK)) {
      window
          .page()
          .setContent(page("<style>p{color:#bbb}</style>", "<p>Pale</p><input id='bare'>"));
      assertThatThrownBy(() -> Accessibility.check(window.page()))
          .hasMessageContaining("color-contrast: p ")
          .hasMessageContaining("label: #bare");
    }
  }

  @Test
  void whatDoesNotFitIsNamed() {
    try (BrowserWindow window = session.window(NOWHERE, Manner.PHONE)) {
      window
          .page()
          .setContent(
              page(
                  "<style>button{padding:0;border:0;width:14px;height:14px;margin:0}</style>",
                  "<div id='broad' style='width:500px'>broad</div>"
                      + "<button id='a'>a</button><button id='b'>b</button>"));
      assertThatThrownBy(() -> Layout.checkFit(window.page()))
          .hasMessageContaining("in a window of 390 px")
          .hasMessageContaining("<div#broad")
          .hasMessageContaining("too small to touch, 14 x 14 px: <button#a");
    }
  }

  @Test
  void whatKeyboardsCanNotDoIsNamed() {
    try (BrowserWindow window = session.window(NOWHERE, Manner.DESK)) {
      Page page = window.page();
      page.setContent(
          page(
              "<style>#bare:focus{outline:none}</style>",
              "<a id='bare' href='#x'>bare</a><button id='trap'>trap</button><a href='#y'>y</a>"));
      page.evaluate(
          "() => document.getElementById('trap').addEventListener('keydown', e =>"
              + " e.preventDefault())");
      assertThatThrownBy(() -> Layout.checkKeyboard(page))
          .hasMessageContaining("no ring: 0: <a> bare")
          .hasMessageContaining("not reached by Tab: 2: <a> y");
    }
  }

  @Test
  void troubleInTheWindowIsKept() {
    try (BrowserWindow window = session.window(NOWHERE, Manner.DESK)) {
      window
          .page()
          .setContent(page("", "<img alt='' src='http://localhost:9/x'><script>boom()</script>"));
      window.page().evaluate("() => console.error('a loud one')");
      assertThat(String.join("\n", window.troubles()))
          .contains("asked another machine: http://localhost:9/x")
          .contains("script error: ")
          .contains("a loud one");
      assertThatThrownBy(window::assertCalm).hasMessageContaining("boom is not defined");
    }
  }

  @Test
  void withoutScriptsNoneRun() {
    try (BrowserWindow window = session.window(NOWHERE, Manner.DESK.withoutScript())) {
      window.page().setContent(page("", "<script>document.title = 'ran'</script>"));
      assertThat(window.page().title()).isEqualTo("A page");
    }
  }
}
