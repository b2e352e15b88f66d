package org.loomwright.model.parts;

/** What sort of covering a bundle gets. Decides how it gives off its heat. */
public enum CoveringForm {
  /** Adhesive tape of plastic. */
  TAPE,
  /** Adhesive tape of cloth or fleece. */
  CLOTH_TAPE,
  /** Braided or woven sleeve. */
  SLEEVE,
  /** Heat-shrink tube. */
  SHRINK_TUBE,
  /** Corrugated or smooth tube with air round the bundle. */
  CONDUIT
}
