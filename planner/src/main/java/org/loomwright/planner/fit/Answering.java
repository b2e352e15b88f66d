package org.loomwright.planner.fit;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.loomwright.planner.builds.Diagram;
import org.loomwright.planner.fit.FitAnswer.Deciding;

/**
 * Answers from a fit check. The page does the same sums in the same order, so that it comes to the
 * same answer to the last digit.
 */
final class Answering {
  private static final int NO_BUILD = -1;

  private final FitCheck check;
  private final List<Integer> known;

  Answering(FitCheck check, Map<String, String> answers) {
    this.check = check;
    this.known = known(check, answers);
  }

  FitAnswer answer() {
    if (fold(check.wiring().whole(), known).at(check.wiring().whole().top()).classes().isEmpty()) {
      FitAnswer.Part open = new FitAnswer.Part(Outcome.OPEN, List.of(), Deciding.NOTHING);
      return new FitAnswer(
          conflict(),
          open,
          open,
          open,
          new FitAnswer.Number(List.of(), true, Deciding.NOTHING),
          new FitAnswer.Job(Optional.empty(), List.of()));
    }
    return new FitAnswer(
        List.of(),
        part(check.wiring().whole(), refusals()),
        part(check.modules().whole(), demands(check.modules())),
        part(check.coding().whole(), demands(check.coding())),
        number(),
        job());
  }

  private static List<Integer> known(FitCheck check, Map<String, String> answers) {
    Set<String> left = new TreeSet<>(answers.keySet());
    List<Integer> known = new ArrayList<>();
    for (FitQuestion question : check.questions()) {
      left.remove(question.id());
      String value = answers.get(question.id());
      List<String> values = question.options().stream().map(FitQuestion.Option::value).toList();
      if (value != null && !values.contains(value)) {
        throw new IllegalArgumentException(
            "'"
                + value
                + "' is no answer to '"
                + question.id()
                + "'; answers are "
                + String.join(", ", values));
      }
      known.add(value == null ? Diagram.UNKNOWN : values.indexOf(value));
    }
    if (!left.isEmpty()) {
      throw new IllegalArgumentException(
          "there is no question '"
              + left.iterator().next()
              + "'; questions are "
              + check.questions().stream().map(FitQuestion::id).collect(Collectors.joining(", ")));
    }
    return List.copyOf(known);
  }

  private static Diagram.Folded<Left> fold(Diagram<Left> diagram, List<Integer> known) {
    return diagram.fold(known, Function.identity(), (trait, parts) -> joined(parts));
  }

  // Builds of every branch remain; sets must decide on each of them.
  private static Left joined(List<Left> parts) {
    TreeSet<Integer> classes = new TreeSet<>();
    List<List<Integer>> sets = Sets.NOTHING;
    for (Left part : parts) {
      classes.addAll(part.classes());
      sets = Sets.both(sets, part.sets());
    }
    return new Left(List.copyOf(classes), sets, 0);
  }

  private Left at(Diagram<Left> diagram) {
    return fold(diagram, known).at(diagram.top());
  }

  // Answers are taken back one by one, the last first, as long as the rest still can't be.
  private List<String> conflict() {
    List<Integer> rest = new ArrayList<>(known);
    Diagram<Left> diagram = check.wiring().whole();
    for (int i = rest.size() - 1; i >= 0; i--) {
      int value = rest.get(i);
      rest.set(i, Diagram.UNKNOWN);
      if (!fold(diagram, rest).at(diagram.top()).classes().isEmpty()) {
        rest.set(i, value);
      }
    }
    List<String> ids = new ArrayList<>();
    for (int i = 0; i < rest.size(); i++) {
      if (rest.get(i) != Diagram.UNKNOWN) {
        ids.add(check.questions().get(i).id());
      }
    }
    return ids;
  }

  private static FitAnswer.Part part(
      Outcome outcome, List<FitAnswer.Reason> reasons, Deciding deciding) {
    return new FitAnswer.Part(outcome, reasons, deciding);
  }

  private FitAnswer.Part part(Diagram<Left> diagram, List<FitAnswer.Reason> reasons) {
    return part(outcome(at(diagram)), reasons, deciding(diagram));
  }

  // Outcome 0 alone fits, 1 alone does not; 2, "not proven", says neither.
  private static Outcome outcome(Left left) {
    return left.classes().equals(List.of(0))
        ? Outcome.FITS
        : left.classes().equals(List.of(1)) ? Outcome.DOES_NOT : Outcome.OPEN;
  }

  private List<FitAnswer.Reason> refusals() {
    List<FitAnswer.Reason> reasons = new ArrayList<>();
    List<Wiring.Refusal> all = check.wiring().refusals();
    for (int i = 0; i < all.size(); i++) {
      Outcome outcome = outcome(at(all.get(i).concerned()));
      if (outcome != Outcome.FITS) {
        reasons.add(new FitAnswer.Reason(outcome, i));
      }
    }
    return reasons;
  }

  private List<FitAnswer.Reason> demands(Demands demands) {
    List<FitAnswer.Reason> reasons = new ArrayList<>();
    for (int i = 0; i < demands.each().size(); i++) {
      reasons.add(new FitAnswer.Reason(outcome(at(demands.each().get(i).needed())), i));
    }
    return reasons;
  }

  private FitAnswer.Number number() {
    Numbers numbers = check.numbers();
    List<Integer> classes = at(numbers.whole()).classes();
    int none = numbers.ids().size();
    return new FitAnswer.Number(
        classes.stream().filter(it -> it < none).map(numbers.ids()::get).toList(),
        classes.contains(none),
        deciding(numbers.whole()));
  }

  private Deciding deciding(Diagram<Left> diagram) {
    Left left = at(diagram);
    if (left.classes().size() < 2) {
      return Deciding.NOTHING;
    }
    return new Deciding(
        open(diagram).stream().map(it -> check.questions().get(it).id()).toList(),
        least(left.sets()).stream().map(it -> check.traits().get(it).id()).toList());
  }

  private record Fork(int trait, List<Integer> ways) {}

  // Unanswered questions that the diagram still asks once known answers are followed and what they
  // make alike is put together. Ways that no build goes can be put with any other.
  private Set<Integer> open(Diagram<Left> diagram) {
    Map<Object, Integer> numbers = new LinkedHashMap<>();
    Map<Integer, Fork> forks = new HashMap<>();
    int top =
        diagram
            .<Integer>fold(
                known,
                end ->
                    end.classes().isEmpty()
                        ? NO_BUILD
                        : numbers.computeIfAbsent(end, it -> numbers.size()),
                (trait, ways) -> {
                  Set<Integer> apart = new TreeSet<>(ways);
                  apart.remove(NO_BUILD);
                  if (apart.size() < 2) {
                    return apart.stream().findFirst().orElse(NO_BUILD);
                  }
                  Fork fork = new Fork(trait, ways);
                  int number = numbers.computeIfAbsent(fork, it -> numbers.size());
                  forks.put(number, fork);
                  return number;
                })
            .at(diagram.top());
    Set<Integer> open = new TreeSet<>();
    Set<Integer> seen = new HashSet<>();
    Deque<Integer> next = new ArrayDeque<>(List.of(top));
    while (!next.isEmpty()) {
      int number = next.remove();
      Fork fork = forks.get(number);
      if (seen.add(number) && fork != null) {
        open.add(fork.trait());
        next.addAll(fork.ways());
      }
    }
    return open;
  }

  // Fewest traits; among equally few those found out in the least time, then the first.
  private List<Integer> least(List<List<Integer>> sets) {
    List<Integer> best = List.of();
    double least = Double.POSITIVE_INFINITY;
    int size = sets.get(0).size();
    for (List<Integer> set : sets) {
      double minutes = 0;
      for (int trait : set) {
        minutes += check.traits().get(trait).minutes();
      }
      if (set.size() == size && minutes < least) {
        best = set;
        least = minutes;
      }
    }
    return best;
  }

  private FitAnswer.Job job() {
    Work work = check.work();
    double whole = weight(work.whole());
    if (!(whole > 0)) {
      return new FitAnswer.Job(Optional.empty(), List.of());
    }
    double minutes = 0;
    for (Work.WorkPart part : work.parts()) {
      minutes += part.minutes() * (weight(part.weight()) / whole);
    }
    List<FitAnswer.Line> lines = new ArrayList<>();
    for (Work.Item item : work.items()) {
      List<Integer> classes = at(item.done()).classes();
      if (classes.contains(0)) {
        lines.add(new FitAnswer.Line(item.kind(), item.words(), classes.size() == 1));
      }
    }
    return new FitAnswer.Job(Optional.of(minutes), lines);
  }

  private double weight(Diagram<Double> diagram) {
    return diagram
        .fold(
            known,
            Function.identity(),
            (trait, parts) -> {
              double sum = 0;
              for (int i = 0; i < parts.size(); i++) {
                sum += check.questions().get(trait).options().get(i).share() * parts.get(i);
              }
              return sum;
            })
        .at(diagram.top());
  }
}
