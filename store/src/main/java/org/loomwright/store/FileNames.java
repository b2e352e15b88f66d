package org.loomwright.store;

import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** File names of documents, such as {@code packer.vehicle.json}, that every system takes. */
final class FileNames {
  private final Set<String> taken = new HashSet<>();

  FileNames(List<String> pictures) {
    pictures.forEach(it -> taken.add(it.toLowerCase(Locale.ROOT)));
  }

  /** A name no other document has, also where capitals don't count. */
  String of(DocumentKey key) {
    String stem = plain(key.id()) + "." + key.kind();
    String name = stem + ".json";
    for (int i = 2; !taken.add(name.toLowerCase(Locale.ROOT)); i++) {
      name = stem + "." + i + ".json";
    }
    return name;
  }

  private static String plain(String id) {
    StringBuilder plain = new StringBuilder();
    for (byte b : id.getBytes(StandardCharsets.UTF_8)) {
      boolean safe =
          b >= 'a' && b <= 'z'
              || b >= 'A' && b <= 'Z'
              || b >= '0' && b <= '9'
              || b == '-'
              || b == '_'
              || b == '.' && plain.length() > 0;
      plain.append(safe ? String.valueOf((char) b) : String.format(Locale.ROOT, "%%%02X", b));
    }
    return plain.length() <= 120 ? plain.toString() : plain.substring(0, 120);
  }
}
