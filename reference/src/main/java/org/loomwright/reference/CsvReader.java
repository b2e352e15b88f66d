package org.loomwright.reference;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads comma-separated text with leading comment lines ("# ...") and one header line. A field may
 * stand in double quotes; a doubled quote inside stands for one. Fields do not span lines. Cells
 * are trimmed; missing cells at the end of a line are empty.
 */
final class CsvReader {
  private CsvReader() {}

  static ReferenceTable read(String name, String text) {
    List<String> sources = new ArrayList<>();
    List<String> header = List.of();
    List<ReferenceTable.Row> rows = new ArrayList<>();
    int number = 0;
    for (String line : text.lines().toList()) {
      number++;
      if (line.startsWith("#")) {
        sources.add(line.substring(1).strip());
      } else if (line.isBlank()) {
        continue;
      } else if (header.isEmpty()) {
        header = fields(line);
      } else {
        rows.add(row(name + " line " + number, header, fields(line)));
      }
    }
    if (header.isEmpty()) {
      throw new IllegalArgumentException(name + " has no header line");
    }
    return new ReferenceTable(name, sources, header, rows);
  }

  private static ReferenceTable.Row row(String where, List<String> header, List<String> fields) {
    if (fields.size() > header.size()) {
      throw new IllegalArgumentException(
          where + " has " + fields.size() + " fields, but the header has " + header.size());
    }
    Map<String, String> cells = new LinkedHashMap<>();
    for (int i = 0; i < header.size(); i++) {
      cells.put(header.get(i), i < fields.size() ? fields.get(i) : "");
    }
    return new ReferenceTable.Row(where, cells);
  }

  static List<String> fields(String line) {
    List<String> fields = new ArrayList<>();
    StringBuilder field = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (c == '"') {
        if (quoted && i + 1 < line.length() && line.charAt(i + 1) == '"') {
          field.append('"');
          i++;
        } else {
          quoted = !quoted;
        }
      } else if (c == ',' && !quoted) {
        fields.add(field.toString().strip());
        field.setLength(0);
      } else {
        field.append(c);
      }
    }
    fields.add(field.toString().strip());
    return fields;
  }
}
