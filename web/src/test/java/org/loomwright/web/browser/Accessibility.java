package org.loomwright.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.List;

/** Holds a page to the rules of WCAG 2.2 AA and good practice that a program can try. */
public final class Accessibility {
  private static final String RUN = Scripts.own("accessibility.js");

  private Accessibility() {}

  /** Fails with rule, element and reason for everything that is wrong. */
  public static void check(Page page) {
    assertThat(faults(page)).as("accessibility of " + page.url()).isEmpty();
  }

  /** Fails as {@link #check}, but tries only what can change with colours or width. */
  public static void checkLook(Page page) {
    assertThat(lookFaults(page)).as("accessibility of " + page.url()).isEmpty();
  }

  /** All that is wrong, a line each. */
  public static List<String> faults(Page page) {
    return run(page, "all");
  }

  static List<String> lookFaults(Page page) {
    return run(page, "look");
  }

  private static List<String> run(Page page, String what) {
    // Until its style has come, a page has other sizes and colours.
    page.waitForLoadState();
    if (!Boolean.TRUE.equals(page.evaluate("() => typeof window.axe === 'object'"))) {
      page.evaluate(Scripts.AXE + "; true");
    }
    return ((List<?>) page.evaluate(RUN, what)).stream().map(String::valueOf).toList();
  }
}
