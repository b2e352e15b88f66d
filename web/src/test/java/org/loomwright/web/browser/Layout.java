package org.loomwright.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Holds a page to its width, its touch targets, and full use by keyboard. */
public final class Layout {
  private static final String FIT = Scripts.own("fit.js");
  private static final String WALK = Scripts.own("walk.js");

  private Layout() {}

  /** Fails when the page does not fit, is hard to touch, or can't be walked by keyboard. */
  public static void check(Page page) {
    List<String> faults = new ArrayList<>(fitFaults(page));
    faults.addAll(walkFaults(page));
    assertThat(faults).as("layout of " + page.url()).isEmpty();
  }

  /** Fails when the page is wider than the window or something to touch is too small. */
  public static void checkFit(Page page) {
    assertThat(fitFaults(page)).as("layout of " + page.url()).isEmpty();
  }

  /** Fails when a control is not reached by Tab, holds the focus, or shows no ring. */
  public static void checkKeyboard(Page page) {
    assertThat(walkFaults(page)).as("use by keyboard of " + page.url()).isEmpty();
  }

  static List<String> fitFaults(Page page) {
    page.waitForLoadState();
    return lines(page.evaluate(FIT));
  }

  /** Presses Tab through the whole page, as often as there are controls and once more. */
  static List<String> walkFaults(Page page) {
    page.waitForLoadState();
    List<String> wanted = lines(page.evaluate(WALK, "begin"));
    // In a field for a day, Tab stops at day, month, year and calendar.
    int inside = 3 * page.locator("input[type=date]").count();
    for (int i = 0; i <= wanted.size() + inside; i++) {
      page.keyboard().press("Tab");
    }
    List<String> reached = lines(page.evaluate(WALK, "reached"));
    List<String> faults = new ArrayList<>(lines(page.evaluate(WALK, "end")));
    Set<String> missed = new LinkedHashSet<>(wanted);
    reached.forEach(missed::remove);
    missed.forEach(it -> faults.add("not reached by Tab: " + it));
    return faults;
  }

  private static List<String> lines(Object answer) {
    return ((List<?>) answer).stream().map(String::valueOf).toList();
  }
}
