package org.loomwright.model.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.loomwright.model.evidence.How;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.JobState;
import org.loomwright.model.quantity.Percent;
import org.loomwright.model.quantity.TimeSpan;
import org.loomwright.model.quantity.Voltage;
import org.loomwright.model.vehicle.SplicePolicy;
import org.loomwright.model.vehicle.Tell;
import org.loomwright.model.vehicle.TellHow;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.TraitValue;
import org.loomwright.model.vehicle.Vehicle;

class ShareCountTest {
  private static Vehicle vehicle(List<Optional<Percent>> shares) {
    List<TraitValue> values = new ArrayList<>();
    for (int i = 0; i < shares.size(); i++) {
      values.add(new TraitValue("v" + i, "value " + i, shares.get(i)));
    }
    return withValues(values);
  }

  private static Vehicle withValues(List<TraitValue> values) {
    Tell tell =
        new Tell(
            TellHow.LOOK, "here", List.of(), TimeSpan.of("1 min"), "Which?", Map.of(), List.of());
    return new Vehicle(
        "van",
        "Van",
        "1",
        Voltage.of("12 V"),
        Voltage.of("11.8 V"),
        Optional.empty(),
        "here",
        List.of(),
        Optional.empty(),
        Optional.empty(),
        SplicePolicy.CRIMP,
        List.of(new Trait("t", "trait", values, tell, Optional.empty())),
        List.of(),
        List.of(),
        Optional.empty(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  private static Job job(String id, String note, String value) {
    return new Job(
        id,
        id,
        "1",
        "kit",
        Optional.empty(),
        "van",
        note,
        Optional.empty(),
        "2026-02-03",
        "T. Halvard",
        JobState.SURVEY,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Map.of("t", value),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        Optional.empty());
  }

  private static Finding finding(String id, Optional<String> note, String vehicle, String value) {
    return new Finding(
        id,
        id,
        "1",
        vehicle,
        Optional.empty(),
        "seen",
        Optional.empty(),
        How.SEEN,
        "2026-02-03",
        "T. Halvard",
        note,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Map.of("t", value),
        List.of(),
        FindingState.OPEN,
        Optional.empty(),
        Optional.empty());
  }

  /** By hand: (6 + 10 × 0.5) / (10 + 10) = 55 %, (4 + 5) / 20 = 45 %. */
  @Test
  void countsAreWeighedAgainstTheShareOnFile() {
    Vehicle van =
        vehicle(List.of(Optional.of(Percent.of("50 %")), Optional.of(Percent.of("50 %"))));
    List<Job> jobs = new ArrayList<>();
    for (int i = 0; i < 10; i++) {
      jobs.add(job("j" + i, "", i < 6 ? "v0" : "v1"));
    }
    ShareCount count = ShareCount.of(van, jobs, List.of()).get(0);
    assertThat(count.seen()).isEqualTo(10);
    assertThat(count.lines()).extracting(ShareCount.Line::count).containsExactly(6, 4);
    assertThat(count.lines()).extracting(ShareCount.Line::percent).containsExactly(55, 45);
  }

  @Test
  void aVehicleCountsOnceAndOnlyWhatItsDocumentKnows() {
    Vehicle van = vehicle(List.of(Optional.empty(), Optional.empty()));
    ShareCount count =
        ShareCount.of(
                van,
                List.of(job("j1", "0417", "v1"), job("j2", "0417", "v1"), job("j3", "9", "gone")),
                List.of(
                    finding("f1", Optional.of(" 04 17"), "van", "v1"),
                    finding("f2", Optional.empty(), "van", "v0"),
                    finding("f3", Optional.empty(), "another", "v0")))
            .get(0);
    assertThat(count.seen()).isEqualTo(2);
    assertThat(count.lines()).extracting(ShareCount.Line::count).containsExactly(1, 1);
  }

  @Test
  void notesAreComparedWithoutCapitalsAndBlanks() {
    Vehicle van = vehicle(List.of(Optional.empty(), Optional.empty()));
    assertThat(
            ShareCount.of(
                    van,
                    List.of(job("j1", "OST 417", "v1"), job("j2", "ost417 ", "v1")),
                    List.of(finding("f1", Optional.of("Ost\u00a0417"), "van", "v1")))
                .get(0)
                .seen())
        .isEqualTo(1);
  }

  private static Vehicle taken(ShareCount count) {
    List<TraitValue> values =
        count.lines().stream()
            .map(
                it ->
                    new TraitValue(
                        it.value().id(),
                        it.value().words(),
                        Optional.of(Percent.of(it.percent() + " %")),
                        Optional.of(it.count())))
            .toList();
    return withValues(values);
  }

  /** Shares taken over again and again: the same vehicles count once, new ones are added. */
  @Test
  void noVehicleIsTakenInTwice() {
    Vehicle van =
        vehicle(List.of(Optional.of(Percent.of("50 %")), Optional.of(Percent.of("50 %"))));
    List<Job> jobs = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      jobs.add(job("j" + i, "", "v0"));
    }
    ShareCount first = ShareCount.of(van, jobs, List.of()).get(0);
    // By hand: (5 + 10 × 0.5) / 15 = 66.7 %.
    assertThat(first.lines()).extracting(ShareCount.Line::percent).containsExactly(67, 33);
    assertThat(first.isNew()).isTrue();
    ShareCount again = ShareCount.of(taken(first), jobs, List.of()).get(0);
    assertThat(again.isNew()).isFalse();
    assertThat(again.lines()).extracting(ShareCount.Line::percent).containsExactly(67, 33);
    for (int i = 5; i < 10; i++) {
      jobs.add(job("j" + i, "", "v1"));
    }
    ShareCount more = ShareCount.of(taken(first), jobs, List.of()).get(0);
    assertThat(more.isNew()).isTrue();
    // By hand: 5 of each, and 5 of each on file: half and half again.
    assertThat(more.lines()).extracting(ShareCount.Line::percent).containsExactly(50, 50);
  }

  @Test
  void aValueThatIsPossibleKeepsAtLeastOnePerCent() {
    Vehicle van =
        vehicle(List.of(Optional.of(Percent.of("99.9 %")), Optional.of(Percent.of("0.1 %"))));
    List<Job> jobs = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      jobs.add(job("j" + i, "", "v0"));
    }
    assertThat(ShareCount.of(van, jobs, List.of()).get(0).lines())
        .extracting(ShareCount.Line::percent)
        .containsExactly(99, 1);
  }

  @Property(tries = 300)
  void sharesAreAHundredInAllAndNearTheExactOnes(
      @ForAll @Size(min = 2, max = 6) List<@IntRange(max = 40) Integer> counts,
      @ForAll @IntRange(max = 3) int kind) {
    List<Optional<Percent>> shares = new ArrayList<>();
    for (int i = 0; i < counts.size(); i++) {
      shares.add(
          kind == 0 || (kind == 1 && i == 0)
              ? Optional.empty()
              : Optional.of(Percent.of(kind == 3 ? "0 %" : (i + 1) + ".5 %")));
    }
    List<Job> jobs = new ArrayList<>();
    for (int i = 0; i < counts.size(); i++) {
      for (int n = 0; n < counts.get(i); n++) {
        jobs.add(job("j" + i + "-" + n, "", "v" + i));
      }
    }
    ShareCount count = ShareCount.of(vehicle(shares), jobs, List.of()).get(0);
    int seen = counts.stream().mapToInt(Integer::intValue).sum();
    assertThat(count.seen()).isEqualTo(seen);
    assertThat(count.lines()).extracting(ShareCount.Line::count).isEqualTo(counts);
    assertThat(count.lines().stream().mapToInt(ShareCount.Line::percent).sum()).isEqualTo(100);
    assertThat(count.lines().stream().mapToDouble(ShareCount.Line::fileShare).sum())
        .isCloseTo(1, org.assertj.core.data.Offset.offset(1e-9));
    for (ShareCount.Line line : count.lines()) {
      double exact = 100 * (line.count() + 10 * line.fileShare()) / (seen + 10);
      assertThat(line.percent()).isPositive();
      // Values that are raised to 1 % take at most that much each from others.
      assertThat(Math.abs(line.percent() - exact)).isLessThan(counts.size() + 1e-9);
    }
  }
}
