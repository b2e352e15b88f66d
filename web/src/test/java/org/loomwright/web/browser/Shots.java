package org.loomwright.web.browser;

import com.microsoft.playwright.Page;
import java.nio.file.Path;

/** Pictures of pages for a person to look at, where a folder for them is named. */
public final class Shots {
  private Shots() {}

  /** Keeps a picture of the whole page; does nothing where no folder is named. */
  public static void keep(Page page, String name) {
    String shots = System.getProperty("loomwright.shots", "");
    if (!shots.isEmpty()) {
      String file = name.replaceAll("[^A-Za-z0-9]+", "-") + ".png";
      page.screenshot(new Page.ScreenshotOptions().setPath(Path.of(shots, file)).setFullPage(true));
    }
  }
}
