package org.loomwright.cli.shell;

/** What the program tells the shell when it ends. */
public final class ExitCode {

  /** Done, and every check holds or is marginal. */
  public static final int DONE = 0;

  /** Done, but a check or the proof fails. */
  public static final int CHECK_FAILS = 1;

  /** The command, an option or the number of words is wrong. */
  public static final int WRONG_USAGE = 2;

  /** A value or a document can't be read or is wrong. */
  public static final int WRONG_INPUT = 3;

  /** A fault of the program itself. */
  public static final int INTERNAL_FAULT = 4;

  private ExitCode() {}
}
