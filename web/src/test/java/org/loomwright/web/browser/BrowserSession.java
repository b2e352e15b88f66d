package org.loomwright.web.browser;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ReducedMotion;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A browser for the tests of a class: taken in a field, left after all tests. Each test opens
 * windows of its own, which share nothing with each other. All classes of a run use one browser,
 * which takes seconds to start; it ends with the run. To be used from one thread only.
 */
public final class BrowserSession implements AutoCloseable {
  private static final List<String> FLAGS =
      List.of(
          "--no-sandbox",
          "--disable-gpu",
          "--disable-quic",
          "--disable-background-networking",
          "--disable-component-update",
          "--disable-sync",
          "--no-first-run");

  private static @Nullable Browser running;

  private final Browser browser;
  private final List<BrowserContext> windows = new ArrayList<>();

  private BrowserSession(Browser browser) {
    this.browser = browser;
  }

  /**
   * Starts the browser where none is running.
   *
   * @throws AssertionError in plain words when the browser or what drives it is not installed
   */
  public static synchronized BrowserSession start() {
    Browser browser = running;
    if (browser == null || !browser.isConnected()) {
      browser = launch();
      running = browser;
    }
    return new BrowserSession(browser);
  }

  private static Browser launch() {
    Path chromium = Programs.chromium();
    System.setProperty("playwright.nodejs.path", Programs.node().toString());
    Map<String, String> settings = new HashMap<>();
    settings.put("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1");
    Playwright playwright = Playwright.create(new Playwright.CreateOptions().setEnv(settings));
    try {
      return playwright
          .chromium()
          .launch(
              new BrowserType.LaunchOptions()
                  .setExecutablePath(chromium)
                  .setHeadless(true)
                  .setArgs(FLAGS));
    } catch (RuntimeException failure) {
      playwright.close();
      throw new AssertionError(chromium + " does not start: " + failure.getMessage(), failure);
    }
  }

  /**
   * A new window with nothing kept from others.
   *
   * @param address address of the first page, such as {@code pages.address()}
   * @param manner its size and colours
   */
  public BrowserWindow window(String address, Manner manner) {
    return new BrowserWindow(
        context(
            new Browser.NewContextOptions()
                .setBaseURL(address)
                .setViewportSize(manner.widthPx(), manner.heightPx())
                .setColorScheme(manner.dark() ? ColorScheme.DARK : ColorScheme.LIGHT)
                .setReducedMotion(ReducedMotion.REDUCE)
                .setLocale("en-GB")
                .setAcceptDownloads(true)
                .setHasTouch(manner.widthPx() <= Manner.PHONE.widthPx())
                .setJavaScriptEnabled(manner.script())));
  }

  /**
   * A place for windows on files of this computer, without any network. What pages keep in it is
   * theirs until it is closed.
   */
  public BrowserContext offline(Manner manner) {
    return context(
        new Browser.NewContextOptions()
            .setOffline(true)
            .setViewportSize(manner.widthPx(), manner.heightPx())
            .setColorScheme(manner.dark() ? ColorScheme.DARK : ColorScheme.LIGHT)
            .setReducedMotion(ReducedMotion.REDUCE)
            .setLocale("en-GB")
            .setAcceptDownloads(true)
            .setJavaScriptEnabled(manner.script()));
  }

  private BrowserContext context(Browser.NewContextOptions options) {
    BrowserContext context = browser.newContext(options);
    windows.add(context);
    return context;
  }

  /** Closes what is left of its windows. */
  @Override
  public void close() {
    windows.forEach(BrowserContext::close);
    windows.clear();
  }
}
