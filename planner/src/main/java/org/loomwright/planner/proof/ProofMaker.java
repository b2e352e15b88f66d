package org.loomwright.planner.proof;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.Counterexample;
import org.loomwright.model.design.Design;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Leaf;
import org.loomwright.model.design.Obligation;
import org.loomwright.model.design.Proof;
import org.loomwright.model.design.Step;
import org.loomwright.model.kit.KitOrder;

/** Proves a kit and its guide on every possible build, or says what can't be shown. */
public final class ProofMaker {
  private ProofMaker() {}

  /**
   * Walks every possible build through the guide. Builds are never listed; sets of them are.
   *
   * <p>What must be shown, by id of the obligation: {@code cover}, {@code decided}, {@code
   * landed-right}, {@code nothing-twice}, {@code needs-met}, {@code limits}, {@code no-back-feed},
   * {@code order}, {@code complete}. Each that fails has its smallest counterexample, except where
   * the guide can't be walked at all: then none is shown, and the detail says why.
   *
   * @param order the order, unknown facts already turned into traits
   * @param cases cases
   * @param design what is made
   * @param guide instructions
   * @throws IllegalArgumentException when a fact of the vehicle is still unknown, or the vehicle's
   *     own conditions name a trait or value it does not have
   */
  public static Proof prove(KitOrder order, List<Case> cases, Design design, Guide guide) {
    return prove(order, cases, design, guide, () -> {});
  }

  /**
   * The same, while a look is taken at each step and each net, e.g. whether to stop; what the look
   * throws ends the proof.
   *
   * @throws IllegalArgumentException as above
   */
  public static Proof prove(
      KitOrder order, List<Case> cases, Design design, Guide guide, Runnable look) {
    return judge(order, cases, design, guide, look).proof();
  }

  /**
   * The same with all builds on which something goes against an obligation.
   *
   * @throws IllegalArgumentException as above
   */
  public static Judged judge(
      KitOrder order, List<Case> cases, Design design, Guide guide, Runnable look) {
    Facts facts;
    try {
      facts = new Facts(order.vehicle());
      if (facts.possible().isEmpty()) {
        return notWalked(order, "the vehicle's rules leave no possible build");
      }
      Subject subject = new Subject(order, List.copyOf(cases), design, guide, facts);
      Findings findings = new Findings(subject.possible());
      Walk.Walked walked = walk(subject, findings, look);
      return new Judged(proof(subject, walked, findings), Optional.of(failing(subject, findings)));
    } catch (UnprovableException e) {
      return notWalked(order, e.why());
    } catch (UnknownNameException e) {
      throw new IllegalArgumentException(
          "vehicle '" + order.vehicle().id() + "': " + e.getMessage(), e);
    }
  }

  private static FailingBuilds failing(Subject subject, Findings findings) {
    Region failing =
        findings.all().stream()
            .map(Fault::builds)
            .reduce(subject.facts().regions().none(), Region::or);
    return new FailingBuilds(subject.vehicle(), subject.possible(), failing);
  }

  private static Walk.Walked walk(Subject subject, Findings findings, Runnable look) {
    OrderKept orderKept = new OrderKept(subject);
    Complete complete = new Complete(subject);
    Readings readings = new Readings(subject);
    List<StepCheck> checks =
        List.of(
            new LandedRight(subject),
            new NothingTwice(subject),
            orderKept,
            complete,
            readings,
            new Cautions(subject));
    Walk.Walked walked = new Walk(subject, checks, findings).walk(look);
    new Cover(subject).check(walked, findings);
    AtEnd atEnd = new AtEnd(subject, readings, look);
    walked
        .reached()
        .forEach(
            (step, here) -> {
              orderKept.atEnd(step, here, walked.progress(), findings);
              complete.atEnd(step, here, walked.progress(), findings);
              atEnd.check(step, here, walked.progress(), findings);
            });
    return walked;
  }

  private static Proof proof(Subject subject, Walk.Walked walked, Findings findings) {
    Counterexamples smallest = new Counterexamples(subject);
    List<Obligation> obligations = new ArrayList<>();
    List<Counterexample> counterexamples = new ArrayList<>();
    for (Claim claim : Claim.values()) {
      List<Fault> faults = findings.of(claim);
      if (faults.isEmpty()) {
        obligations.add(
            new Obligation(claim.id(), claim.words(), true, shown(claim, subject, findings)));
        continue;
      }
      Counterexample example = smallest.smallest(faults);
      counterexamples.add(example);
      obligations.add(
          new Obligation(
              claim.id(),
              claim.words(),
              false,
              example.what()
                  + (example.step().isEmpty() ? "" : " [" + example.step() + "]")
                  + (faults.size() == 1 ? "" : "; " + faults.size() + " findings in all")));
    }
    BigInteger builds =
        walked.reached().values().stream()
            .map(Region::count)
            .reduce(BigInteger.ZERO, BigInteger::add);
    return new Proof(
        counterexamples.isEmpty(), builds, obligations, leaves(subject, walked), counterexamples);
  }

  private static String shown(Claim claim, Subject subject, Findings findings) {
    return findings.checked(claim)
        + " checks over "
        + subject.possible().count()
        + " builds"
        + findings.worst(claim).map(it -> "; nearest to its limit: " + it).orElse("");
  }

  private static List<Leaf> leaves(Subject subject, Walk.Walked walked) {
    List<Leaf> leaves = new ArrayList<>();
    for (Map.Entry<Step, Region> it : walked.reached().entrySet()) {
      List<Case> cases =
          subject.cases().stream()
              .filter(one -> subject.when(one).filter(it.getValue()::meets).isPresent())
              .toList();
      boolean all = it.getValue().equals(subject.possible());
      String words =
          all
              ? "every possible build"
              : String.join("; or ", cases.stream().map(Case::words).distinct().toList());
      leaves.add(
          new Leaf(
              it.getKey().id(),
              cases.stream().map(Case::id).toList(),
              words,
              it.getValue().count()));
    }
    return leaves;
  }

  private static Judged notWalked(KitOrder order, String why) {
    return new Judged(
        new Proof(
            false,
            BigInteger.ZERO,
            Arrays.stream(Claim.values())
                .map(
                    claim ->
                        new Obligation(
                            claim.id(),
                            claim.words(),
                            false,
                            "not shown for vehicle '" + order.vehicle().id() + "': " + why))
                .toList(),
            List.of(),
            List.of()),
        Optional.empty());
  }
}
