package org.loomwright.web.view;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Days and times of day, as at the place of this computer. */
public final class Moments {
  private static final DateTimeFormatter MINUTES =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ROOT);

  private Moments() {}

  /** Day and time of day. */
  public static String of(Instant moment) {
    return MINUTES.format(moment.atZone(ZoneId.systemDefault()));
  }
}
