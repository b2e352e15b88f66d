package org.loomwright.cli.shell;

/**
 * A value or a document that the user gave can't be read or is wrong. The message stands alone:
 * what is wrong, where, and what would be right. Ends the program with {@link
 * ExitCode#WRONG_INPUT}.
 */
public final class WrongInput extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /**
   * Carries the message for the user.
   *
   * @param message one or more full sentences for the user
   */
  public WrongInput(String message) {
    super(message);
  }
}
