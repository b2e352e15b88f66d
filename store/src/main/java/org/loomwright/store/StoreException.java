package org.loomwright.store;

/** Something the store can't do; the message says what, where, and what would be right. */
public final class StoreException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  /** With a message for people. */
  public StoreException(String message) {
    super(message);
  }

  StoreException(String message, Throwable cause) {
    super(message, cause);
  }
}
