package org.loomwright.model.planted;

import java.util.logging.Logger;

/** Planted fault: a model that prints and logs. */
public final class Talker {

  private static final Logger LOGGER = Logger.getLogger("planted");

  private Talker() {}

  /** Says something where nobody should. */
  public static void talk() {
    System.out.println("planted");
    LOGGER.fine("planted");
  }
}
