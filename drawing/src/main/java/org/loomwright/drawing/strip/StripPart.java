package org.loomwright.drawing.strip;

import java.util.List;

/** A part of a circuit, in the order in which the current meets it. */
public sealed interface StripPart {

  /** Where the part is, as a word for people; neighbours in the same place share a band. */
  String place();

  /** Figures written under the part, e.g. "0.012 Ω", "4.2 A", "0.05 V drop". */
  List<String> figures();

  /**
   * A device or a joint.
   *
   * @param place where it is
   * @param symbol how it is drawn
   * @param words what it is, e.g. "fuse F3, 15 A"
   * @param figures figures, one a line
   */
  record Device(String place, Symbol symbol, String words, List<String> figures)
      implements StripPart {
    /** Copies the list. */
    public Device {
      figures = List.copyOf(figures);
    }
  }

  /**
   * A wire.
   *
   * @param place where it runs
   * @param lead id of the lead
   * @param size conductor size, e.g. "1 mm²"
   * @param colour colour code of the insulation, e.g. "RD/WH"
   * @param length length, e.g. "1850 mm"
   * @param figures figures, one a line
   */
  record Wire(
      String place, String lead, String size, String colour, String length, List<String> figures)
      implements StripPart {
    /** Copies the list. */
    public Wire {
      figures = List.copyOf(figures);
    }

    /** What stands above the wire. */
    String words() {
      return String.join(" ", size, colour, length);
    }
  }
}
