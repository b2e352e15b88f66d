package org.loomwright.model.design;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.colour.Colour;

/**
 * One added wire. End {@code a} is the source side for supplies, the consumer side for grounds.
 *
 * @param id id, e.g. "L3"
 * @param label text printed on it
 * @param what what it is for, in words
 * @param component component letter of the cases its ends name
 * @param needs needs it serves
 * @param wire wire part
 * @param areaMm2 conductor area
 * @param colour colour
 * @param a one end
 * @param b other end
 * @param runs runs it follows, from a to b
 * @param pathMm length of the path
 * @param lengthMm finished length with slack
 * @param cutMm length to cut
 * @param toleranceWorstMm how far the path may be off, worst case
 * @param toleranceRssMm the same by root sum of squares
 * @param currentA most continuous current in any case
 * @param fuseA rating of the fuse that protects it, 0 for grounds and for leads of the user's own
 * @param own id of the kit's own lead that it is, empty for leads that needs ask for
 */
public record Lead(
    String id,
    String label,
    String what,
    String component,
    List<String> needs,
    String wire,
    double areaMm2,
    Colour colour,
    LeadEnd a,
    LeadEnd b,
    List<String> runs,
    double pathMm,
    double lengthMm,
    double cutMm,
    double toleranceWorstMm,
    double toleranceRssMm,
    double currentA,
    double fuseA,
    @JsonInclude(JsonInclude.Include.NON_ABSENT) Optional<String> own) {
  public Lead {
    needs = List.copyOf(needs);
    runs = List.copyOf(runs);
  }

  /** A lead that needs ask for. */
  public Lead(
      String id,
      String label,
      String what,
      String component,
      List<String> needs,
      String wire,
      double areaMm2,
      Colour colour,
      LeadEnd a,
      LeadEnd b,
      List<String> runs,
      double pathMm,
      double lengthMm,
      double cutMm,
      double toleranceWorstMm,
      double toleranceRssMm,
      double currentA,
      double fuseA) {
    this(
        id,
        label,
        what,
        component,
        needs,
        wire,
        areaMm2,
        colour,
        a,
        b,
        runs,
        pathMm,
        lengthMm,
        cutMm,
        toleranceWorstMm,
        toleranceRssMm,
        currentA,
        fuseA,
        Optional.empty());
  }

  /** The same lead with its ends used otherwise. */
  public Lead withEnds(LeadEnd newA, LeadEnd newB) {
    return new Lead(
        id,
        label,
        what,
        component,
        needs,
        wire,
        areaMm2,
        colour,
        newA,
        newB,
        runs,
        pathMm,
        lengthMm,
        cutMm,
        toleranceWorstMm,
        toleranceRssMm,
        currentA,
        fuseA,
        own);
  }

  /** Whether a case uses the lead, rather than parking it or doing without it. */
  public boolean isUsedIn(String caseId) {
    return a.isUsedIn(caseId) || b.isUsedIn(caseId);
  }
}
