package org.loomwright.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Request;
import com.microsoft.playwright.Response;
import com.microsoft.playwright.options.ColorScheme;
import java.net.URI;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A window of the browser, which keeps what went wrong in it: errors told in the console, errors of
 * scripts, requests that failed, and requests that went to another machine.
 */
public final class BrowserWindow implements AutoCloseable {
  private final BrowserContext context;
  private final Page page;
  private final List<String> troubles = new ArrayList<>();
  private final Set<String> mayFail = new LinkedHashSet<>();

  BrowserWindow(BrowserContext context) {
    this.context = context;
    context.onRequest(this::requested);
    context.onRequestFailed(this::failed);
    context.onResponse(this::answered);
    context.onConsoleMessage(
        it -> {
          // That a request was refused is told by its answer already.
          boolean told = it.text().startsWith("Failed to load resource");
          if (!told && (it.type().equals("error") || it.type().equals("warning"))) {
            troubles.add("console " + it.type() + " at " + it.location() + ": " + it.text());
          }
        });
    context.onWebError(it -> troubles.add("script error: " + it.error()));
    this.page = context.newPage();
    page.setDefaultTimeout(30_000);
  }

  private void requested(Request request) {
    URI address = URI.create(request.url().replaceFirst("(?s)^(data|blob):.*", "$1:x"));
    boolean inside = Set.of("data", "blob", "about").contains(address.getScheme());
    if (!inside && !"127.0.0.1".equals(address.getHost())) {
      troubles.add("asked another machine: " + request.url());
    }
  }

  private void failed(Request request) {
    // A page that is left before all of it came, and a file that is saved, end like this.
    if (!"net::ERR_ABORTED".equals(request.failure())) {
      troubles.add("no answer: " + request.url() + " " + request.failure());
    }
  }

  private void answered(Response response) {
    if (response.status() >= 400 && !mayFail.contains(path(response.url()))) {
      troubles.add("answer " + response.status() + ": " + response.url());
    }
  }

  private static String path(String address) {
    URI whole = URI.create(address);
    return Optional.ofNullable(whole.getRawPath()).orElse("");
  }

  /** Addresses (path without parameters) that are asked in the knowledge that they fail. */
  public BrowserWindow mayFail(String... paths) {
    mayFail.addAll(List.of(paths));
    return this;
  }

  /** What is seen in the window. */
  public Page page() {
    return page;
  }

  /**
   * Goes to an address of the program, and waits for the plan where a kit is still being planned.
   *
   * @param path the address from the first slash on
   */
  public Page go(String path) {
    page.navigate(path);
    if (page.locator("section.waiting").count() > 0) {
      page.locator(".standing-box, #stage .error")
          .first()
          .waitFor(new com.microsoft.playwright.Locator.WaitForOptions().setTimeout(240_000));
    }
    return page;
  }

  /** Prefers light or dark colours from now on; the page stays. */
  public BrowserWindow prefer(ColorScheme scheme) {
    page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(scheme));
    return this;
  }

  /** Fails when anything went wrong since the window was opened, or asked another machine. */
  public void assertCalm() {
    assertThat(troubles).as("what went wrong in the window").isEmpty();
  }

  /** What went wrong so far. */
  public List<String> troubles() {
    return List.copyOf(troubles);
  }

  @Override
  public void close() {
    context.close();
  }
}
