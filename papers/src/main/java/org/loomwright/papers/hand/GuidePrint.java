package org.loomwright.papers.hand;

import org.loomwright.model.design.Plan;
import org.loomwright.papers.json.PlanMapper;
import org.loomwright.papers.page.OneFile;
import tools.jackson.databind.json.JsonMapper;

/**
 * The fingerprint of a guide: two guides have the same one only when they say the same. The record
 * of a one-file guide carries it, so that a record is never read against another guide.
 */
public final class GuidePrint {
  private static final int DIGITS = 16;
  private static final JsonMapper MAPPER = PlanMapper.mapper();

  private GuidePrint() {}

  /** The first 16 hexadecimal digits, in lower case, of the SHA-256 of the guide's JSON text. */
  public static String of(Plan plan) {
    return OneFile.sha256(MAPPER.writeValueAsString(plan.guide())).substring(0, DIGITS);
  }
}
