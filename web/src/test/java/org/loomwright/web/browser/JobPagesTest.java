package org.loomwright.web.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.web.DemoStore;
import org.loomwright.web.job.DemoJobs;

/** Pages of jobs in every state: accessible, within their width, by keyboard, to be read in sun. */
class JobPagesTest {
  private static final List<String> PATHS =
      List.of(
          "/jobs",
          "/jobs/take-in",
          "/new/job",
          "/job/seen",
          "/job/seen/survey",
          "/job/seen/survey?question=16",
          "/job/seen/steps?step=1",
          "/job/half",
          "/job/half/survey?question=9",
          "/job/half/steps",
          "/job/half/values",
          "/job/half/sign",
          "/job/half/number",
          "/job/full",
          "/job/full/values",
          "/job/over",
          "/job/over/steps?step=4",
          "/job/over/sign");

  @TempDir private Path folder;

  @Test
  void areAccessibleCalmAndFit() {
    try (DemoStore store = DemoStore.in(folder);
        BrowserSession session = BrowserSession.start()) {
      DemoJobs jobs =
          DemoJobs.in(store.store())
              .survey("seen")
              .underWay("half", 34)
              .complete("full", false)
              .complete("over", true);
      List<String> paths = new ArrayList<>(PATHS);
      jobs.way().stream()
          .filter(it -> !it.readings().isEmpty() || it.ask().isPresent() || it.shown().isPresent())
          .limit(6)
          .forEach(it -> paths.add("/job/half/steps?step=" + it.number()));
      List<String> faults = new ArrayList<>();
      try (BrowserWindow window = session.window(store.pages().address(), Manner.PHONE)) {
        for (String path : paths) {
          faults.addAll(look(window, path));
        }
        window.assertCalm();
      }
      assertThat(faults).isEmpty();
    }
  }

  private static List<String> look(BrowserWindow window, String path) {
    List<String> faults = new ArrayList<>();
    for (Manner manner : List.of(Manner.PHONE, Manner.DESK)) {
      window.page().setViewportSize(manner.widthPx(), manner.heightPx());
      for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
        window.prefer(scheme);
        Page page = scheme == ColorScheme.LIGHT ? ready(window, path) : window.page();
        String at = path + " " + manner.widthPx() + " " + scheme + ": ";
        Accessibility.faults(page).forEach(it -> faults.add(at + it));
        Layout.fitFaults(page).forEach(it -> faults.add(at + it));
        if (manner.equals(Manner.PHONE)) {
          small(page).forEach(it -> faults.add(at + it));
          faint(page).forEach(it -> faults.add(at + it));
        }
        Shots.keep(page, path + "-" + manner.widthPx() + "-" + scheme);
      }
    }
    Layout.walkFaults(window.page()).forEach(it -> faults.add(path + ": " + it));
    return faults;
  }

  private static Page ready(BrowserWindow window, String path) {
    Page page = window.page();
    page.navigate(path);
    page.waitForCondition(
        () -> page.locator("section.waiting").count() == 0,
        new Page.WaitForConditionOptions().setTimeout(240_000));
    return page;
  }

  /** What one touches on pages of jobs has 48 px at least. */
  private static List<String> small(Page page) {
    return lines(page.evaluate(Scripts.own("touch.js")));
  }

  /** Text of steps has a contrast of 7 to 1 at least. */
  private static List<String> faint(Page page) {
    return lines(page.evaluate(Scripts.own("contrast.js")));
  }

  private static List<String> lines(Object found) {
    return ((List<?>) found).stream().map(String::valueOf).toList();
  }
}
