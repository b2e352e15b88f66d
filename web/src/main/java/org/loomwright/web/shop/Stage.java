package org.loomwright.web.shop;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The stages of a kit, from what is missing to what is printed. */
public enum Stage {
  GAP("Gap", "What is missing, on which builds", "gap"),
  WAYS("Ways", "How each need is met, and what was left out", "cases"),
  LEADS("Leads", "What is made and where it runs", "leads", "map", "bundles", "strips", "cut"),
  SUMS("Sums", "Every figure beside its limit, and how it was found"),
  GUIDE("Guide", "What the fitter does, step by step", "cautions", "guide"),
  PROOF("Proof", "Every build walked through the guide", "proof"),
  PACK("Pack", "What is bought, made and printed", "numbers", "parts", "faces");

  private final String title;
  private final String words;
  private final List<String> sections;

  Stage(String title, String words, String... sections) {
    this.title = title;
    this.words = words;
    this.sections = List.of(sections);
  }

  /** Its name on the page. */
  public String title() {
    return title;
  }

  /** What it answers, in a few words. */
  public String words() {
    return words;
  }

  /** Its name in addresses. */
  public String key() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Sections of the pack it shows. */
  List<String> sections() {
    return sections;
  }

  /** A stage by its name in addresses. */
  public static Optional<Stage> of(String key) {
    return Arrays.stream(values()).filter(it -> it.key().equals(key)).findFirst();
  }
}
