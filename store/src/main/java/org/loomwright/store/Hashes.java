package org.loomwright.store;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/** SHA-256 (FIPS 180-4) as lower-case hexadecimal. */
final class Hashes {
  private Hashes() {}

  static String of(String text) {
    return of(text.getBytes(StandardCharsets.UTF_8));
  }

  static String of(byte[] bytes) {
    return hex(digest().digest(bytes));
  }

  static boolean isHash(String text) {
    return text.length() == 64
        && text.chars().allMatch(c -> c >= '0' && c <= '9' || c >= 'a' && c <= 'f');
  }

  /** Hash over fields in their order; each is preceded by its length, so that none can shift. */
  static String seal(List<String> fields) {
    StringBuilder text = new StringBuilder();
    fields.forEach(field -> text.append(field.length()).append(':').append(field));
    return of(text.toString());
  }

  static MessageDigest digest() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  static String hex(byte[] digest) {
    return HexFormat.of().formatHex(digest);
  }
}
