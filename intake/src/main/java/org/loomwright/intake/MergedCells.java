package org.loomwright.intake;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.jspecify.annotations.Nullable;

/** Finds the merged ranges of a sheet (ISO/IEC 29500-1, 18.3.1.55), which the reader leaves out. */
final class MergedCells {
  private static final String WORKBOOK = "xl/workbook.xml";
  private static final String LINKS = "xl/_rels/workbook.xml.rels";
  private static final Pattern RANGE =
      Pattern.compile("([A-Z]{1,3})([0-9]{1,7}):[A-Z]{1,3}([0-9]{1,7})");

  private MergedCells() {}

  /**
   * A merged range, of which only the first column counts here.
   *
   * @param column column from 0
   * @param first first row, from 1
   * @param last last row
   */
  record Range(int column, int first, int last) {}

  /** The ranges of a sheet over more than one row. */
  static List<Range> of(Map<String, byte[]> parts, String sheet) throws XMLStreamException {
    List<String> link = new ArrayList<>();
    each(
        parts.get(WORKBOOK),
        "sheet",
        it -> {
          if (sheet.equals(it.getAttributeValue(null, "name"))) {
            for (int i = 0; i < it.getAttributeCount(); i++) {
              // The namespace differs between the two forms of the standard.
              boolean ofLinks =
                  String.valueOf(it.getAttributeNamespace(i)).contains("relationships");
              if (ofLinks && it.getAttributeLocalName(i).equals("id")) {
                link.add(it.getAttributeValue(i));
              }
            }
          }
        });
    List<String> targets = new ArrayList<>();
    each(
        parts.get(LINKS),
        "Relationship",
        it -> {
          if (link.contains(it.getAttributeValue(null, "Id"))) {
            targets.add(String.valueOf(it.getAttributeValue(null, "Target")));
          }
        });
    List<Range> ranges = new ArrayList<>();
    for (String target : targets) {
      String name = target.startsWith("/") ? target.substring(1) : "xl/" + target;
      each(
          parts.get(name),
          "mergeCell",
          it -> add(String.valueOf(it.getAttributeValue(null, "ref")), ranges));
    }
    return ranges;
  }

  private static void add(String ref, List<Range> ranges) {
    Matcher range = RANGE.matcher(ref);
    if (!range.matches() || ranges.size() >= Limits.ROWS) {
      return;
    }
    int column = 0;
    for (char letter : range.group(1).toCharArray()) {
      column = column * 26 + letter - 'A' + 1;
    }
    int first = Integer.parseInt(range.group(2));
    int last = Integer.parseInt(range.group(3));
    if (last > first && column <= Limits.COLUMNS) {
      ranges.add(new Range(column - 1, first, last));
    }
  }

  static void each(byte @Nullable [] xml, String element, Consumer<XMLStreamReader> what)
      throws XMLStreamException {
    if (xml == null) {
      return;
    }
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    XMLStreamReader reader = factory.createXMLStreamReader(new ByteArrayInputStream(xml));
    try {
      while (reader.hasNext()) {
        if (reader.next() == XMLStreamConstants.START_ELEMENT
            && reader.getLocalName().equals(element)) {
          what.accept(reader);
        }
      }
    } finally {
      reader.close();
    }
  }
}
