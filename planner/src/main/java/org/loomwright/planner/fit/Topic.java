package org.loomwright.planner.fit;

/** What a question helps to decide. */
public enum Topic {
  /** Whether the wiring fits. */
  WIRING,
  /** Whether modules are needed beside the kit. */
  MODULES,
  /** Whether control units have to be coded. */
  CODING,
  /** Which part number it is. */
  NUMBER,
  /** What is to be done in the vehicle. */
  WORK
}
