package org.loomwright.model.design;

/** What a step of the guide does. */
public enum StepKind {
  CAUTION,
  PREPARE,
  ASK,
  ACT,
  CONFIRM,
  MEASURE
}
