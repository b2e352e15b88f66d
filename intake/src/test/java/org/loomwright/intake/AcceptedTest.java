package org.loomwright.intake;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.evidence.Evidence;
import org.loomwright.model.evidence.How;
import org.loomwright.model.parts.Cavity;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.vehicle.CavityFact;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.Spot;
import org.loomwright.model.vehicle.Vehicle;

class AcceptedTest {
  private static final Housing HOUSING = Van.housing(Van.SOCKET);
  private static final Evidence DRAWING =
      new Evidence(
          How.DRAWING,
          Optional.of("2026-02-03"),
          Optional.of("T. Halvard"),
          Optional.of("service table, page 12"),
          Optional.empty());

  /** A case: a table, a vehicle that knows some of its cavities, and some of its rows. */
  private record Case(Vehicle vehicle, PastedTable table, ColumnGuess columns, Assumptions with) {
    static Case of(Random random, double mistakes) {
      Set<String> unknown = new HashSet<>();
      HOUSING.cavities().stream()
          .map(Cavity::number)
          .filter(it -> random.nextInt(4) > 0)
          .forEach(unknown::add);
      RandomPinout.Table made = RandomPinout.of(random, HOUSING, mistakes);
      Vehicle vehicle = noted(random, Van.without(unknown));
      PastedTable table =
          RandomPinout.table(
              made.rows().stream()
                  .map(row -> random.nextInt(4) == 0 ? filed(made.meanings(), row, vehicle) : row)
                  .toList());
      ColumnGuess columns = ColumnGuess.of(table, HOUSING, vehicle);
      for (int i = 0; i < table.width(); i++) {
        columns = columns.with(i, made.meanings().get(i));
      }
      Assumptions with =
          new Assumptions(
              Assumptions.usual().presentWhen(),
              random.nextBoolean()
                  ? Optional.of(new Spot.OfUnit("trailer-module"))
                  : Optional.empty(),
              Van.HOUSINGS);
      return new Case(vehicle, table, columns, with);
    }

    /** Some cavities have facts on file already. */
    private static Vehicle noted(Random random, Vehicle vehicle) {
      List<CavityFact> facts = new ArrayList<>();
      for (Cavity cavity : HOUSING.cavities()) {
        if (random.nextInt(5) == 0) {
          facts.add(
              new CavityFact(
                  cavity.number(),
                  random.nextBoolean() ? Optional.of(Condition.never()) : Optional.empty(),
                  Optional.empty(),
                  Optional.empty(),
                  random.nextBoolean() ? Optional.of(DRAWING) : Optional.empty()));
        }
      }
      return Copies.with(vehicle, Copies.with(Van.SOCKET, facts), vehicle.circuits());
    }

    /** A row as the vehicle's own circuit in that cavity would have it, if there is one. */
    private static List<String> filed(List<Meaning> meanings, List<String> row, Vehicle vehicle) {
      Spot here = new Spot.OfCavity("tow-socket", row.get(meanings.indexOf(Meaning.CAVITY)));
      return vehicle.circuits().stream()
          .filter(on -> on.to().contains(here))
          .findFirst()
          .map(
              on ->
                  meanings.stream()
                      .map(
                          it ->
                              switch (it) {
                                case NAME -> on.name();
                                case SIZE -> on.wire().text();
                                case COLOUR -> on.colour().text();
                                case TO, NOTE -> "";
                                default -> row.get(meanings.indexOf(it));
                              })
                      .toList())
          .orElse(row);
    }

    Preview preview(Vehicle on) {
      Connector socket = on.connector("tow-socket").orElseThrow();
      return Preview.of(table, columns, socket, HOUSING, on, with);
    }
  }

  @Property(tries = 100)
  void whatIsAcceptedStandsInTheVehicle(@ForAll long seed) {
    Random random = new Random(seed);
    Case it = Case.of(random, random.nextInt(3) * 0.08);
    Preview preview = it.preview(it.vehicle());
    List<Integer> rows = some(random, preview.acceptable());
    Accepted accepted = Accepted.of(preview, rows, DRAWING);
    assertThat(Van.again(accepted.vehicle())).isEqualTo(accepted.vehicle());
    for (Preview.Row row : preview.rows()) {
      if (rows.contains(row.number())) {
        stands(row.outcome().orElseThrow(), accepted.vehicle());
      }
    }
  }

  private static void stands(Outcome outcome, Vehicle vehicle) {
    if (outcome instanceof Outcome.OfCircuit of) {
      Circuit wanted = of.circuit();
      assertThat(vehicle.circuits())
          .anySatisfy(
              on -> {
                assertThat(on.id()).startsWith(wanted.id());
                assertThat(on.from()).isEqualTo(wanted.from());
                assertThat(on.to()).isEqualTo(wanted.to());
                assertThat(on.wire()).isEqualTo(wanted.wire());
                assertThat(on.colour()).isEqualTo(wanted.colour());
                assertThat(on.name()).isEqualTo(wanted.name());
                assertThat(Notes.has(on.evidence(), of.note())).isTrue();
              });
    } else if (outcome instanceof Outcome.OfFact of) {
      CavityFact on =
          vehicle.connector("tow-socket").orElseThrow().cavity(of.fact().cavity()).orElseThrow();
      assertThat(on.pluggedWhen()).isEqualTo(of.fact().pluggedWhen());
      assertThat(on.blockedWhen()).isEqualTo(of.fact().blockedWhen());
      assertThat(Notes.has(on.evidence(), of.note())).isTrue();
    }
  }

  @Property(tries = 100)
  void rowsNotAcceptedChangeNothing(@ForAll long seed) {
    Random random = new Random(seed);
    Case it = Case.of(random, random.nextInt(3) * 0.08);
    Preview preview = it.preview(it.vehicle());
    List<Integer> rows = some(random, preview.acceptable());
    Vehicle now = Accepted.of(preview, rows, DRAWING).vehicle();
    Set<String> touched = new HashSet<>();
    Set<String> cavities = new HashSet<>();
    for (Preview.Row row : preview.rows()) {
      if (rows.contains(row.number())
          && row.outcome().orElseThrow() instanceof Outcome.OfCircuit of) {
        touched.add(of.circuit().id());
      } else if (rows.contains(row.number())
          && row.outcome().orElseThrow() instanceof Outcome.OfFact of) {
        cavities.add(of.fact().cavity());
      }
    }
    long added = now.circuits().size() - it.vehicle().circuits().size();
    assertThat(added)
        .isEqualTo(
            preview.rows().stream()
                .filter(row -> rows.contains(row.number()))
                .flatMap(row -> row.outcome().stream())
                .filter(o -> o instanceof Outcome.OfCircuit of && of.isNew())
                .count());
    for (Circuit old : it.vehicle().circuits()) {
      if (!touched.contains(old.id())) {
        assertThat(now.circuit(old.id())).contains(old);
      }
    }
    Connector before = it.vehicle().connector("tow-socket").orElseThrow();
    Connector socket = now.connector("tow-socket").orElseThrow();
    for (Cavity cavity : HOUSING.cavities()) {
      if (!cavities.contains(cavity.number())) {
        assertThat(socket.cavity(cavity.number())).isEqualTo(before.cavity(cavity.number()));
      }
    }
    assertThat(Accepted.of(preview, List.of(), DRAWING).vehicle()).isEqualTo(it.vehicle());
  }

  @Property(tries = 1000)
  void acceptingTwiceIsAcceptingOnce(@ForAll long seed) {
    Random random = new Random(seed);
    Case it = Case.of(random, random.nextInt(3) * 0.08);
    Preview first = it.preview(it.vehicle());
    List<Integer> rows =
        random.nextBoolean() ? first.acceptable() : some(random, first.acceptable());
    Vehicle once = Accepted.of(first, rows, DRAWING).vehicle();
    Preview second = it.preview(once);
    for (Preview.Row row : second.rows()) {
      if (rows.contains(row.number())) {
        assertThat(row.state())
            .as("%s, before %s", row, first.rows())
            .isEqualTo(Preview.State.SAME);
      }
    }
    Accepted twice = Accepted.of(second, rows, DRAWING);
    assertThat(twice.vehicle()).isEqualTo(once);
    assertThat(twice.changes()).isEmpty();
  }

  @Property(tries = 100)
  void nothingOfAnAcceptedTableIsThrownAway(@ForAll long seed) {
    Random random = new Random(seed);
    Case it = Case.of(random, random.nextInt(3) * 0.08);
    Preview preview = it.preview(it.vehicle());
    List<Integer> all =
        preview.rows().stream()
            .filter(r -> r.outcome().isPresent())
            .map(Preview.Row::number)
            .toList();
    Vehicle now = Accepted.of(preview, all, DRAWING).vehicle();
    String notes =
        Stream.concat(
                now.circuits().stream().map(Circuit::evidence),
                now.connectors().stream()
                    .flatMap(c -> c.cavities().stream())
                    .map(CavityFact::evidence))
            .flatMap(Optional::stream)
            .flatMap(e -> e.note().stream())
            .reduce("", (a, b) -> a + "\n" + b);
    for (Preview.Row row : preview.rows()) {
      for (int i = 0; i < row.cells().size(); i++) {
        String text = row.cells().get(i);
        Meaning meaning = it.columns().columns().get(i).meaning();
        boolean kept =
            meaning == Meaning.NOTE
                || (row.state() == Preview.State.PROBLEM && meaning != Meaning.CAVITY);
        if (row.outcome().isPresent() && kept && !text.isEmpty()) {
          assertThat(notes).as("%s", row).contains(text);
        }
      }
    }
    assertThat(Van.again(now)).isEqualTo(now);
  }

  /** Guards against properties that hold only because little was tried. */
  @Test
  void allThatCanComeOfARowIsTried() {
    Set<String> met = new TreeSet<>();
    for (int seed = 0; seed < 200; seed++) {
      Random random = new Random(seed);
      Case it = Case.of(random, random.nextInt(3) * 0.08);
      for (Preview.Row row : it.preview(it.vehicle()).rows()) {
        String outcome =
            row.outcome()
                .map(o -> o instanceof Outcome.OfCircuit of ? "circuit " + of.isNew() : "fact")
                .orElse("nothing");
        met.add(row.state() + " " + outcome);
      }
    }
    assertThat(met)
        .containsExactly(
            "CHANGES circuit false",
            "CHANGES fact",
            "NEW circuit true",
            "NEW fact",
            "PROBLEM fact",
            "PROBLEM nothing",
            "SAME nothing");
  }

  @Test
  void onlyWhatWasReadOrToldIsPasted() {
    Preview preview = Van.preview("pin\tname\n11\tspare\n", Van.SOCKET, Van.VEHICLE);
    Evidence seen =
        new Evidence(
            How.SEEN, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    assertThatThrownBy(() -> Accepted.of(preview, List.of(2), seen))
        .hasMessageContaining("'drawing' or 'told'");
    assertThatThrownBy(() -> Accepted.of(preview, List.of(9), DRAWING))
        .hasMessageContaining("no row 9");
  }

  @Test
  void idsOfNewCircuitsAreReadableAndUnique() {
    Vehicle van = Van.without(Set.of("1", "2", "3"));
    String text =
        "pin\tname\tsize\tcolour\tto\n1\tStop lamp!\t1.5\tRD\tmodule a\n2\tStop lamp\t1.5\tBK\tmodule b\n3\t東\t2.5\tBN\trear-ground\n";
    Preview preview = Van.preview(text, Van.SOCKET, van);
    Accepted accepted = Accepted.of(preview, preview.acceptable(), DRAWING);
    assertThat(accepted.changes().stream().map(Accepted.Change::words).toList())
        .containsExactly(
            "new circuit 'stop-lamp-2'", "new circuit 'stop-lamp-3'", "new circuit 'tow-socket-3'");
    assertThat(accepted.vehicle().circuit("tow-socket-3").orElseThrow().from())
        .isEqualTo(new Spot.OfGround("rear-ground"));
  }

  private static List<Integer> some(Random random, List<Integer> rows) {
    List<Integer> some = new ArrayList<>(rows);
    some.removeIf(row -> random.nextInt(3) == 0);
    return some;
  }
}
