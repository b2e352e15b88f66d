package org.loomwright.web.browser;

/**
 * How a page is looked at.
 *
 * @param widthPx width of the window, CSS px
 * @param heightPx height of the window, CSS px
 * @param dark whether dark colours are preferred
 * @param script whether scripts run
 */
public record Manner(int widthPx, int heightPx, boolean dark, boolean script) {
  /** A desk: 1280 px wide, light, with scripts. */
  public static final Manner DESK = new Manner(1280, 900, false, true);

  /** A phone: 390 px wide, light, with scripts. */
  public static final Manner PHONE = new Manner(390, 844, false, true);

  /** The same in dark colours. */
  public Manner inDark() {
    return new Manner(widthPx, heightPx, true, script);
  }

  /** The same without scripts. */
  public Manner withoutScript() {
    return new Manner(widthPx, heightPx, dark, false);
  }
}
