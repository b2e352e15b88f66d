package org.loomwright.model.parts;

/** What a sundry part is used as. */
public enum SundryUse {
  CAVITY_PLUG,
  END_CAP,
  LABEL,
  TIE
}
