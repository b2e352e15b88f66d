package org.loomwright.drawing.map;

import java.util.List;

/**
 * Ends of leads in the same thing at one place.
 *
 * @param kind what it is
 * @param words its name
 * @param rework whether the ends are made so in the vehicle only, in place of what the bench made
 * @param ends the ends
 */
record EndRow(EndKind kind, String words, boolean rework, List<End> ends) {
  EndRow {
    ends = List.copyOf(ends);
  }

  /**
   * The end of a lead.
   *
   * @param lead index of the lead
   * @param where slot or cavity; empty for none
   * @param cases cases of it; empty for all cases of the lead's component
   */
  record End(int lead, String where, List<String> cases) {
    End {
      cases = List.copyOf(cases);
    }
  }
}
