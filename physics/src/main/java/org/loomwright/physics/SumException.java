package org.loomwright.physics;

/** A sum cannot be done with the values given; the message says which value and what is right. */
public class SumException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /**
   * @param message a full sentence for a person
   */
  public SumException(String message) {
    super(message);
  }
}
