package org.loomwright.model.stock;

import java.util.Locale;

/** Where a kit that was made has gone. */
public enum StockState {
  /** In the shop. */
  ON_THE_SHELF,
  /** Sold; who has it may fit it any day. */
  SOLD,
  /** In a vehicle. */
  FITTED,
  /** Taken apart or thrown away. */
  SCRAPPED;

  /** As people say it, e.g. "on the shelf". */
  public String words() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
