package org.loomwright.planner.proof;

/** A condition speaks of a trait or a value that the vehicle does not have. */
final class UnknownNameException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  UnknownNameException(String message) {
    super(message);
  }
}
