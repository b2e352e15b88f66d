package org.loomwright.web;

/** The pages can't be opened because another program listens on their port. */
public final class PortTakenException extends Exception {
  private static final long serialVersionUID = 1L;

  /**
   * @param port the port asked for
   */
  PortTakenException(int port) {
    super(
        "port "
            + port
            + " is taken by another program, perhaps by another Loomwright; stop it, or choose"
            + " another port");
  }
}
