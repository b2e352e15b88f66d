package org.loomwright.model.design;

import java.math.BigDecimal;
import java.util.List;

/**
 * One kit as made and sold.
 *
 * @param id part number
 * @param words builds it is sold to, in words
 * @param leads leads it holds
 * @param cases cases it serves; a build is served when all its cases are in the list
 * @param share share of builds it is sold to, 0 to 1
 * @param parts parts list
 * @param benchMinutes bench work
 * @param material cost of material
 * @param labour cost of bench work
 * @param currency currency
 */
public record PartNumber(
    String id,
    String words,
    List<String> leads,
    List<String> cases,
    double share,
    List<PartLine> parts,
    double benchMinutes,
    BigDecimal material,
    BigDecimal labour,
    String currency) {
  public PartNumber {
    leads = List.copyOf(leads);
    cases = List.copyOf(cases);
    parts = List.copyOf(parts);
  }
}
