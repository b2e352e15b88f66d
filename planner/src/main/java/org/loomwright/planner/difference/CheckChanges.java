package org.loomwright.planner.difference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.Verdict;

/** Checks whose verdict or figure changed. */
final class CheckChanges {
  private static final Pattern LEAD = Pattern.compile("(?<=^|/)(L\\d+)([ab]?)(?=/|$)");
  private static final Pattern LEAD_NAME = Pattern.compile("^lead (L\\d+)$");

  /** Checks that only compare two numbers on file; how near they come says little. */
  private static final Set<String> COMPARED =
      Set.of("fit", "slot", "splice", "stud", "section for the fuse", "least area", "fuse limit");

  private CheckChanges() {}

  /** A check in two plans, empty where a plan does not have it. */
  private record Pair(Optional<Check> before, Optional<Check> after) {
    Verdict was() {
      return before.map(Check::verdict).orElse(Verdict.HOLDS);
    }

    Verdict is() {
      return after.map(Check::verdict).orElse(Verdict.HOLDS);
    }

    Check any() {
      return after.or(() -> before).orElseThrow();
    }

    /** What the change of verdict is, for putting alike ones together. */
    String sort() {
      return any().name() + "/" + was() + "/" + is() + "/" + after.isPresent() + before.isPresent();
    }
  }

  /** Changed verdicts, failing ones first. */
  static List<Change> verdicts(Two two) {
    Map<String, List<Pair>> sorts = new LinkedHashMap<>();
    pairs(two).stream()
        .filter(it -> it.was() != it.is())
        .sorted(
            Comparator.comparing((Pair it) -> it.was().worse(it.is()))
                .reversed()
                .thenComparing(it -> it.is().compareTo(it.was()) < 0))
        .forEach(it -> sorts.computeIfAbsent(it.sort(), sort -> new ArrayList<>()).add(it));
    List<Change> changes = new ArrayList<>();
    for (List<Pair> alike : sorts.values()) {
      if (alike.size() <= two.detail()) {
        alike.forEach(it -> changes.add(change(it, one(two, it))));
      } else {
        changes.add(change(alike.get(0), many(two, alike)));
      }
    }
    return changes;
  }

  private static Change change(Pair pair, String words) {
    return new Change(
        pair.is().compareTo(pair.was()) > 0 ? Weight.WORSE : Weight.BETTER, words, Topic.SUMS);
  }

  private static String one(Two two, Pair pair) {
    return verdict(pair)
        + ": "
        + pair.any().name()
        + ", "
        + subject(two, pair)
        + ": "
        + figures(pair);
  }

  private static String verdict(Pair pair) {
    if (pair.after().isEmpty()) {
      return "gone, " + (pair.was() == Verdict.FAILS ? "failed" : "was marginal");
    }
    return switch (pair.is()) {
      case FAILS -> pair.was() == Verdict.MARGINAL ? "fails, was marginal" : "fails";
      case MARGINAL -> pair.was() == Verdict.FAILS ? "marginal, failed before" : "marginal";
      case HOLDS -> "holds, " + (pair.was() == Verdict.FAILS ? "failed before" : "was marginal");
    };
  }

  /** "10.9 V, was 11.2 V, limit 10.5 V". */
  private static String figures(Pair pair) {
    Check any = pair.any();
    String unit = any.unit();
    double is = any.figure();
    Optional<Check> before = pair.after().isPresent() ? pair.before() : Optional.empty();
    double was = before.map(Check::figure).orElse(is);
    double limit = any.limit();
    double oldLimit = before.map(Check::limit).orElse(limit);
    StringBuilder words = new StringBuilder(Words.figure(is, nearest(is, was, limit), unit));
    if (was != is && before.isPresent()) {
      words.append(", was ").append(Words.figure(was, is, unit));
    }
    words.append(any.atMost() ? ", at most " : ", at least ");
    words.append(Words.figure(limit, nearest(limit, is, oldLimit), unit));
    if (oldLimit != limit) {
      words.append(" (was ").append(Words.figure(oldLimit, limit, unit)).append(')');
    }
    return words + (unit.equals(Words.OF_RATING) ? " " + unit : "");
  }

  /** Whichever of two the value is harder to tell from. */
  private static double nearest(double value, double one, double two) {
    if (one == value) {
      return two;
    }
    return two == value || Math.abs(one - value) <= Math.abs(two - value) ? one : two;
  }

  private static String subject(Two two, Pair pair) {
    Check any = pair.any();
    Matcher lead = LEAD_NAME.matcher(any.subject());
    List<Lead> leads = (pair.after().isPresent() ? two.after() : two.before()).design().leads();
    return lead.matches()
        ? leads.stream()
            .filter(it -> it.id().equals(lead.group(1)))
            .findFirst()
            .map(PlanNames::lead)
            .orElse(any.subject())
        : (pair.after().isPresent() ? two.is() : two.was()).brief(any.subject());
  }

  private static String many(Two two, List<Pair> pairs) {
    Pair tightest =
        pairs.stream().min(Comparator.comparingDouble(it -> it.any().margin())).orElseThrow();
    String subjects =
        Words.list(pairs.stream().map(it -> shortSubject(two, it)).distinct().toList());
    return verdict(tightest)
        + ": "
        + tightest.any().name()
        + ", "
        + pairs.size()
        + " times: "
        + subjects
        + "; tightest "
        + subject(two, tightest)
        + ": "
        + figures(tightest);
  }

  private static String shortSubject(Two two, Pair pair) {
    Matcher lead = LEAD_NAME.matcher(pair.any().subject());
    return lead.matches() ? lead.group(1) : subject(two, pair);
  }

  /** Figures that moved while the verdict stayed, summed up in one line. */
  static List<Change> figures(Two two) {
    List<Pair> moved =
        pairs(two).stream()
            .filter(it -> it.before().isPresent() && it.after().isPresent())
            .filter(it -> it.was() == it.is() && step(it) != 0)
            .toList();
    if (moved.isEmpty()) {
      return List.of();
    }
    List<Pair> nearer = moved.stream().filter(it -> step(it) < 0).toList();
    long farther = moved.size() - nearer.size();
    List<String> parts = new ArrayList<>();
    if (!nearer.isEmpty()) {
      parts.add(nearer.size() + " nearer to " + limits(nearer.size()));
    }
    if (farther > 0) {
      parts.add(farther + " farther from " + limits(farther));
    }
    String most =
        nearer.stream()
            .filter(it -> !COMPARED.contains(sort(it.any())))
            .min(Comparator.comparingDouble(CheckChanges::step))
            .map(
                it ->
                    "; the most: " + it.any().name() + ", " + subject(two, it) + ": " + figures(it))
            .orElse("");
    return List.of(
        Change.neutral(Topic.SUMS, "checks with the same verdict: " + Words.list(parts) + most));
  }

  private static String limits(long count) {
    return Words.verb(count, "its limit", "their limits");
  }

  private static String sort(Check check) {
    return check.id().substring(0, Math.max(0, check.id().indexOf('/')));
  }

  /** How far the margin moved, by share of what it could be; less than a thousandth is nothing. */
  private static double step(Pair pair) {
    double was = margin(pair.before().orElseThrow());
    double is = margin(pair.after().orElseThrow());
    return Math.abs(is - was) < 1e-3 ? 0 : is - was;
  }

  /** Between -1 and 1, so that a limit far away does not outweigh a near one. */
  private static double margin(Check check) {
    double margin = check.margin();
    return Double.isNaN(margin) ? -1 : margin / (1 + Math.abs(margin));
  }

  private static List<Pair> pairs(Two two) {
    Map<String, Check> before =
        two.before().checks().stream()
            .collect(
                Collectors.toMap(
                    it -> idNow(two, it.id()), it -> it, (one, other) -> one, LinkedHashMap::new));
    Map<String, Check> after =
        two.after().checks().stream()
            .collect(
                Collectors.toMap(Check::id, it -> it, (one, other) -> one, LinkedHashMap::new));
    return Stream.concat(
            after.entrySet().stream()
                .map(
                    it ->
                        new Pair(
                            Optional.ofNullable(before.get(it.getKey())),
                            Optional.of(it.getValue()))),
            before.entrySet().stream()
                .filter(it -> !after.containsKey(it.getKey()))
                .map(it -> new Pair(Optional.of(it.getValue()), Optional.empty())))
        .toList();
  }

  /** The id a check of the earlier plan has in the later one. */
  private static String idNow(Two two, String id) {
    return LEAD.matcher(id)
        .replaceAll(
            found ->
                Matcher.quoteReplacement(
                    two.leadNow(found.group(1)).orElse("gone " + found.group(1)) + found.group(2)));
  }
}
