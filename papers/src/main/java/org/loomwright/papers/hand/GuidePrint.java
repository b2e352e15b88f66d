package org.loomwright.papers.hand;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.loomwright.model.design.Plan;
import org.loomwright.papers.json.PlanMapper;
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
    return sha256(MAPPER.writeValueAsString(plan.guide())).substring(0, DIGITS);
  }

  /** SHA-256 (FIPS 180-4) of a text in UTF-8, as hexadecimal digits in lower case. */
  static String sha256(String text) {
    return HexFormat.of().formatHex(digest(text));
  }

  /** SHA-256 of a text in UTF-8, 32 bytes. */
  static byte[] digest(String text) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }
}
