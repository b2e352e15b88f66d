package org.loomwright.planner.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigInteger;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.lifecycle.AfterContainer;
import org.loomwright.model.design.Counterexample;
import org.loomwright.model.design.Proof;
import org.loomwright.model.vehicle.Trait;

/** The proof on sets of builds agrees with a walk of each build alone. */
class ProofOracleTest {
  private static final Map<String, int[]> OUTCOMES = new TreeMap<>();

  @Property(tries = 1000)
  void agreesWithAWalkOfEachBuild(@ForAll long seed) {
    RandomKit kit = new RandomKit(seed);
    BruteForce brute = new BruteForce(kit);
    if (brute.possible() == 0) {
      return;
    }
    Proof proof = ProofMaker.prove(kit.order, kit.cases, kit.design, kit.guide);
    same("cover", brute.covered, proof, seed, kit);
    same("decided", brute.decided, proof, seed, kit);
    same("landed-right", brute.landedRight, proof, seed, kit);
    assertThat(proof.builds())
        .as("seed %d", seed)
        .isEqualTo(BigInteger.valueOf(brute.possible() - brute.unserved.size()));
    if (!brute.unserved.isEmpty() && overlaps(proof)) {
      return;
    }
    if (!brute.unserved.isEmpty() && kit.order.vehicle().traits().size() < 7) {
      smallest(kit, brute, proof, seed);
    }
  }

  // Where two ways also lead on somewhere, that may be the smaller counterexample.
  private static boolean overlaps(Proof proof) {
    return proof.obligations().stream()
            .anyMatch(it -> it.id().equals("cover") && !it.detail().contains("left unserved"))
        || proof.obligations().stream()
            .anyMatch(it -> it.id().equals("cover") && it.detail().contains("findings in all"));
  }

  private static void same(
      String obligation, boolean expected, Proof proof, long seed, RandomKit kit) {
    OUTCOMES.computeIfAbsent(obligation, id -> new int[2])[expected ? 1 : 0]++;
    boolean shown = !ProofMakerTest.failed(proof).contains(obligation);
    assertThat(shown)
        .as("seed %d, %s: %s %s", seed, obligation, kit, proof.counterexamples())
        .isEqualTo(expected);
  }

  /** All its builds are unserved, and no fewer values do. */
  private static void smallest(RandomKit kit, BruteForce brute, Proof proof, long seed) {
    Counterexample found = ProofMakerTest.counterexample(proof, "cover");
    List<Map<String, String>> with = with(found.traits(), kit);
    assertThat(brute.unserved).as("seed %d", seed).containsAll(with);
    assertThat(found.builds()).as("seed %d", seed).isEqualTo(BigInteger.valueOf(with.size()));
    Set<Map<String, String>> shorter =
        kit.combinations().stream()
            .flatMap(build -> choices(build, kit.order.vehicle().traits(), found.traits().size()))
            .collect(Collectors.toSet());
    for (Map<String, String> choice : shorter) {
      List<Map<String, String>> builds = with(choice, kit);
      assertThat(!builds.isEmpty() && brute.unserved.containsAll(builds))
          .as("seed %d: %s is shorter than %s", seed, choice, found.traits())
          .isFalse();
    }
  }

  private static List<Map<String, String>> with(Map<String, String> values, RandomKit kit) {
    return kit.combinations().stream()
        .filter(build -> build.entrySet().containsAll(values.entrySet()))
        .filter(
            build ->
                kit.order.vehicle().rules().stream().noneMatch(it -> it.exclude().holds(build)))
        .toList();
  }

  /** Parts of a build with fewer values than a number. */
  private static Stream<Map<String, String>> choices(
      Map<String, String> build, List<Trait> traits, int below) {
    return IntStream.range(0, 1 << traits.size())
        .filter(bits -> Integer.bitCount(bits) < below)
        .mapToObj(
            bits -> {
              Map<String, String> choice = new TreeMap<>(build);
              for (int i = 0; i < traits.size(); i++) {
                if ((bits >> i & 1) == 0) {
                  choice.remove(traits.get(i).id());
                }
              }
              return choice;
            });
  }

  @AfterContainer
  static void bothOutcomesOccur() {
    OUTCOMES.forEach(
        (obligation, counts) -> {
          int all = counts[0] + counts[1];
          assertThat(counts[0]).as("failing %s of %d", obligation, all).isGreaterThan(all / 10);
          assertThat(counts[1]).as("shown %s of %d", obligation, all).isGreaterThan(all / 10);
        });
  }

  @Property(tries = 300)
  void countsAndQuantifiesLikeLists(@ForAll long seed) {
    RandomKit kit = new RandomKit(seed);
    Conditions conditions = Conditions.over(kit.order.vehicle());
    Random random = new Random(seed);
    String lead = "L" + random.nextInt(6);
    Region region = conditions.of(kit.right(lead)).and(conditions.possible(kit.order.vehicle()));
    List<Map<String, String>> builds =
        with(Map.of(), kit).stream().filter(kit.right(lead)::holds).toList();
    assertThat(region.count()).as("seed %d", seed).isEqualTo(BigInteger.valueOf(builds.size()));
    String gone = kit.order.vehicle().traits().get(0).id();
    Set<Map<String, String>> left =
        builds.stream()
            .map(
                build -> {
                  Map<String, String> rest = new TreeMap<>(build);
                  rest.remove(gone);
                  return rest;
                })
            .collect(Collectors.toSet());
    int values = kit.order.vehicle().traits().get(0).values().size();
    assertThat(region.forget(Set.of(gone)).count())
        .as("seed %d", seed)
        .isEqualTo(BigInteger.valueOf((long) left.size() * values));
    assertThat(region.or(region.not())).isEqualTo(conditions.regions().all());
  }
}
