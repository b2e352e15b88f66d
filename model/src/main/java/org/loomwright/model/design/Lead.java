package org.loomwright.model.design;

import java.util.List;
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
 * @param fuseA rating of the fuse that protects it, 0 for grounds
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
    double fuseA) {
  public Lead {
    needs = List.copyOf(needs);
    runs = List.copyOf(runs);
  }
}
