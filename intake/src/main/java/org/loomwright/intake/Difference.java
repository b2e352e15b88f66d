package org.loomwright.intake;

/**
 * One thing that is on file otherwise.
 *
 * @param what what it is about, e.g. "wire size"
 * @param onFile what is on file; "none" when nothing is
 * @param pasted what the table says
 */
public record Difference(String what, String onFile, String pasted) {
  /** E.g. "wire size: on file 4 mm², pasted 2.5 mm²". */
  public String words() {
    return what + ": on file " + onFile + ", pasted " + pasted;
  }
}
