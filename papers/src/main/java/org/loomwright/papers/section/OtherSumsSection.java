package org.loomwright.papers.section;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.loomwright.papers.calculation.Calculation;
import org.loomwright.papers.page.Html;

/** The sums of needs and of what is shared: feeds, grounds, sections, slots, studs. */
final class OtherSumsSection implements Section {
  private final List<Calculation.Subject> subjects;

  OtherSumsSection(List<Calculation.Subject> subjects) {
    this.subjects = List.copyOf(subjects);
  }

  @Override
  public String id() {
    return "needs";
  }

  @Override
  public String title() {
    return "Needs, and what the vehicle lends";
  }

  /** Places and titles of its parts. */
  Map<String, String> entries() {
    Map<String, String> entries = new LinkedHashMap<>();
    for (int i = 0; i < subjects.size(); i++) {
      entries.put(place(i), subjects.get(i).title());
    }
    return entries;
  }

  private static String place(int index) {
    return "subject-" + (index + 1);
  }

  @Override
  public void write(Pack pack, Html html) {
    html.line("p", "", "The numbers of lines start anew below each heading in a frame.");
    for (int i = 0; i < subjects.size(); i++) {
      Calculation.Subject subject = subjects.get(i);
      String place = place(i);
      SumsTables.write(
          pack,
          subject,
          it -> it.open("div", "subject", place).words(subject.title()).close("div"),
          html);
    }
  }
}
