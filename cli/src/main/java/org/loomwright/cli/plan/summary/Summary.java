package org.loomwright.cli.plan.summary;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.GapPart;
import org.loomwright.model.design.GapStatus;
import org.loomwright.model.design.NeedGap;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Unserved;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.papers.words.Figures;
import org.loomwright.papers.words.Names;
import org.loomwright.planner.electrics.Verified;

/** What a practitioner wants to know of a plan, on one screen. */
public final class Summary {
  private static final int MOST_NEEDS = 8;
  private static final int MOST_CASES = 12;
  private static final int MOST_NUMBERS = 4;
  private static final int MOST_UNSERVED = 4;
  private static final int MOST_WANTED = 4;

  /** Shares are sums of products, so equal ones may differ in the last digits. */
  private static final double SAME_SHARE = 1e-9;

  private final Plan plan;
  private final Names names;
  private final Short brief;
  private final String rest;
  private final Screen screen = new Screen();

  private Summary(KitOrder order, Plan plan, boolean packWritten) {
    this.plan = plan;
    this.names = new Names(order, plan);
    this.brief = new Short(names);
    this.rest = packWritten ? "(see pack.pdf)" : "(--out DIR writes them all)";
  }

  /**
   * The whole summary, lines of at most 100 columns.
   *
   * @param packWritten whether the pack, where long lists can be read to their end, was written
   */
  public static String of(KitOrder order, Plan plan, boolean packWritten) {
    Summary summary = new Summary(order, plan, packWritten);
    summary.head();
    summary.gap();
    summary.cases();
    summary.unserved();
    summary.partNumbers();
    new LeadLines(summary.names, summary.rest).write(summary.screen);
    BundleLines.write(plan, summary.screen);
    CheckLines.write(plan, summary.rest, summary.screen);
    new ProofLines(summary.names, summary.rest).write(summary.screen);
    summary.notes();
    return summary.screen.toString();
  }

  /** The kit, whether it can be released, and what stands against it. */
  public static String brief(KitOrder order, Plan plan, boolean packWritten) {
    Summary summary = new Summary(order, plan, packWritten);
    summary.head();
    summary.size();
    summary.unserved();
    CheckLines.write(plan, summary.rest, summary.screen);
    new ProofLines(summary.names, summary.rest).write(summary.screen);
    return summary.screen.toString();
  }

  private void head() {
    screen.line(plan.kit().name());
    screen.line(
        "Kit "
            + plan.kit().id()
            + ", revision "
            + plan.kit().revision()
            + ", for the "
            + names.order().vehicle().name());
    screen.line(
        Figures.count(plan.builds().possible())
            + " possible "
            + (plan.builds().possible().equals(BigInteger.ONE) ? "build" : "builds")
            + ", "
            + counted(plan.builds().traits(), "trait")
            + ", "
            + counted(plan.builds().groups(), "group")
            + " of builds told apart");
    screen.line(Verdicts.inWords(plan));
  }

  /** How large the kit is, for those who do not read on. */
  private void size() {
    screen.line(
        Figures.capital(counted(plan.cases().size(), "case"))
            + ", "
            + counted(plan.design().leads().size(), "lead")
            + ", "
            + counted(plan.design().partNumbers().size(), "part number")
            + ": "
            + plan.design().partNumbers().stream()
                .map(
                    it ->
                        it.id()
                            + " ("
                            + counted(it.leads().size(), "lead")
                            + ", "
                            + Figures.money(it.material().add(it.labour()), it.currency())
                            + ", "
                            + Figures.share(it.share())
                            + ")")
                .collect(Collectors.joining(", ")));
  }

  private void gap() {
    screen.heading("What is missing");
    // Needs with the same gap share a line.
    Map<String, List<String>> gaps = new LinkedHashMap<>();
    for (NeedGap it : plan.gap()) {
      gaps.computeIfAbsent(missing(it), words -> new ArrayList<>()).add(brief.need(it.need()));
    }
    List<List<String>> rows = new ArrayList<>();
    gaps.forEach((words, needs) -> rows.add(List.of(words, String.join(", ", needs))));
    Cut<List<String>> needs = Cut.of(rows, MOST_NEEDS, rest);
    screen.rows(1, needs.shown());
    needs.more().ifPresent(words -> screen.item("…", words));
    List<String> wanted = new ArrayList<>();
    plan.fit().modules().forEach(it -> wanted.add(withoutEquipment(it)));
    plan.fit().coding().forEach(it -> wanted.add(withoutEquipment(it)));
    Cut<String> beside = Cut.of(wanted, MOST_WANTED, rest);
    beside.shown().forEach(words -> screen.item("also needed:", words));
    beside.more().ifPresent(words -> screen.item("…", words));
  }

  /** The headline has named the equipment already. */
  private String withoutEquipment(String words) {
    return names.order().equipment().stream()
        .map(it -> it.name() + ": ")
        .filter(words::startsWith)
        .findFirst()
        .map(it -> words.substring(it.length()))
        .orElse(words);
  }

  /** "already there on 110 of 264 builds, missing on 154". */
  private String missing(NeedGap gap) {
    Map<GapStatus, BigInteger> builds = new LinkedHashMap<>();
    for (GapStatus status : GapStatus.values()) {
      BigInteger sum =
          gap.parts().stream()
              .filter(part -> part.status() == status)
              .map(GapPart::builds)
              .reduce(BigInteger.ZERO, BigInteger::add);
      if (sum.signum() > 0) {
        builds.put(status, sum);
      }
    }
    BigInteger all = builds.values().stream().reduce(BigInteger.ZERO, BigInteger::add);
    if (builds.size() == 1) {
      return builds.keySet().iterator().next().words() + " on all " + Figures.builds(all);
    }
    List<String> words = new ArrayList<>();
    builds.forEach(
        (status, count) ->
            words.add(
                status.words()
                    + " on "
                    + Figures.count(count)
                    + (words.isEmpty() ? " of " + Figures.builds(all) : "")));
    return String.join(", ", words);
  }

  private void cases() {
    long components = plan.cases().stream().map(Case::component).distinct().count();
    screen.heading(
        "Cases" + (components > 1 ? " (a vehicle has one of each letter)" : "") + ", with share");
    Cut<Case> cases = Cut.of(plan.cases(), MOST_CASES, rest);
    List<List<String>> rows = new ArrayList<>();
    String before = "";
    for (Case it : cases.shown()) {
      // The topic belongs to the letter, so it stands where the letter starts.
      String topic = it.component().equals(before) ? "" : it.topic() + ": ";
      rows.add(List.of(it.id(), topic + it.words(), Figures.share(it.share())));
      before = it.component();
    }
    screen.rows(1, rows);
    cases.more().ifPresent(words -> screen.item("…", words));
  }

  private void unserved() {
    if (plan.unserved().isEmpty()) {
      return;
    }
    screen.heading("Not served");
    Cut<Unserved> unserved = Cut.of(plan.unserved(), MOST_UNSERVED, rest);
    for (Unserved it : unserved.shown()) {
      screen.item(
          "-",
          it.words()
              + " ("
              + Figures.builds(it.builds())
              + "): "
              + it.needs().stream().map(brief::need).collect(Collectors.joining(", "))
              + ": "
              + Short.reason(names.prose(it.reason())));
    }
    unserved.more().ifPresent(words -> screen.item("…", words));
  }

  private void partNumbers() {
    List<PartNumber> all = plan.design().partNumbers();
    screen.heading("Part numbers");
    Cut<PartNumber> numbers = Cut.of(all, MOST_NUMBERS, rest);
    screen.rows(
        1,
        numbers.shown().stream()
            .map(
                it ->
                    List.of(
                        it.id(),
                        soldTo(it),
                        counted(it.leads().size(), "lead")
                            + ", "
                            + Figures.money(it.material().add(it.labour()), it.currency())
                            + ", "
                            + Figures.share(it.share())))
            .toList());
    numbers.more().ifPresent(words -> screen.item("…", words));
  }

  /** The cases that say it, where those of one letter do; else the builds in words. */
  private String soldTo(PartNumber number) {
    Map<String, List<Case>> byLetter =
        plan.cases().stream()
            .collect(
                Collectors.groupingBy(Case::component, LinkedHashMap::new, Collectors.toList()));
    for (List<Case> all : byLetter.values()) {
      List<Case> served = all.stream().filter(it -> number.cases().contains(it.id())).toList();
      double share = served.stream().mapToDouble(Case::share).sum();
      if (served.size() < all.size() && Math.abs(share - number.share()) < SAME_SHARE) {
        return Names.cases(served.stream().map(Case::id).toList());
      }
    }
    return number.words();
  }

  private void notes() {
    if (plan.notes().isEmpty()) {
      return;
    }
    // Who asked for a second look wants to know what it found.
    plan.notes().stream().filter(it -> it.startsWith(Verified.VERIFIED)).forEach(screen::line);
    // One screen has no room for the others; they are the same for every kit planned by this
    // version.
    screen.line(
        "How far the figures go: "
            + counted(plan.notes().size(), "note")
            + " in the pack, under \"How this plan was made\"");
  }

  static String counted(int count, String what) {
    return count + "\u00A0" + what + (count == 1 ? "" : "s");
  }
}
