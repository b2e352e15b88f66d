package org.loomwright.planner.kit;

import java.util.ArrayList;
import java.util.List;
import org.loomwright.model.design.TraceLine;
import org.loomwright.physics.Check;
import org.loomwright.physics.SumException;
import org.loomwright.physics.Trace;

/** Puts checks of ends on the list of a kit. */
final class FitList {
  /** Unit of a count of things that should be alike and are not. */
  private static final String UNLIKE = "unlike";

  private final Checklist list;

  FitList(Checklist list) {
    this.list = list;
  }

  /** A load against its limit: near to it is marginal. */
  void load(String id, String subject, List<String> cases, Check check, Trace trace) {
    list.add(id, subject, cases, check, Checklist.lines(trace));
  }

  /** A size against a range or number: what is just within fits fully. */
  void size(String id, String subject, List<String> cases, Check check, Trace trace) {
    list.addRating(id, subject, cases, check, Checklist.lines(trace));
  }

  /**
   * Things that must be alike.
   *
   * @param unlike how many are not
   * @param lines what was compared
   */
  void alike(
      String id,
      String name,
      String subject,
      List<String> cases,
      long unlike,
      String source,
      List<TraceLine> lines) {
    List<TraceLine> all = new ArrayList<>(lines);
    all.add(new TraceLine("unlike in all", "sum", unlike, UNLIKE, ""));
    list.addRating(id, name, subject, cases, unlike, 0, true, UNLIKE, source, all);
  }

  /** A part that must be there. */
  void missing(String id, String name, String subject, List<String> cases, String source) {
    list.addRating(id, name, subject, cases, 0, 1, false, "parts", source, List.of());
  }

  /** What the data can't judge fails by name: nobody can say that it is safe. */
  void refused(String id, String name, String subject, List<String> cases, SumException why) {
    String words = why.getMessage() == null ? "outside the data" : why.getMessage();
    list.add(id, name, subject, cases, 0, 1, false, "", words, List.of());
  }
}
