package org.loomwright.intake;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.evidence.Evidence;
import org.loomwright.model.evidence.How;
import org.loomwright.model.vehicle.CavityFact;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.Vehicle;

/**
 * A vehicle with accepted rows of a paste in it.
 *
 * @param vehicle the vehicle; equal to that of the preview when nothing changed
 * @param changes what was changed, in words, in the order of the rows
 */
public record Accepted(Vehicle vehicle, List<Change> changes) {
  public Accepted {
    changes = List.copyOf(changes);
  }

  /**
   * One change.
   *
   * @param row row of the table
   * @param words what was done, e.g. "new circuit 'stop-lamp'"
   */
  public record Change(int row, String words) {}

  /**
   * Puts rows of a preview into its vehicle.
   *
   * @param preview the preview
   * @param rows numbers of the accepted rows; others change nothing. A row with a problem is kept
   *     as a note of its cavity, where it has one
   * @param evidence who found it and when, by {@code how} drawing or told; its note says what the
   *     table is from
   * @throws IllegalArgumentException when a row is not in the preview, or the evidence is of
   *     another kind
   */
  public static Accepted of(Preview preview, Collection<Integer> rows, Evidence evidence) {
    if (evidence.how() != How.DRAWING && evidence.how() != How.TOLD) {
      throw new IllegalArgumentException(
          "a pasted table is known by 'drawing' or 'told', not by '" + evidence.words() + "'");
    }
    Set<Integer> wanted = new HashSet<>(rows);
    preview.rows().forEach(row -> wanted.remove(row.number()));
    if (!wanted.isEmpty()) {
      throw new IllegalArgumentException("the preview has no row " + wanted.iterator().next());
    }
    Set<Integer> accepted = new HashSet<>(rows);
    Acceptance acceptance = new Acceptance(preview, evidence);
    preview.rows().stream()
        .filter(row -> accepted.contains(row.number()))
        .forEach(acceptance::take);
    return acceptance.done();
  }

  /** A vehicle that is being changed: copies of its lists, put together again at the end. */
  private static final class Acceptance {
    private final Vehicle vehicle;
    private final Connector connector;
    private final Evidence evidence;
    private final List<Circuit> circuits;
    private final List<CavityFact> facts;
    private final List<Change> changes = new ArrayList<>();

    Acceptance(Preview preview, Evidence evidence) {
      this.vehicle = preview.vehicle();
      this.connector = vehicle.connector(preview.connector()).orElseThrow();
      this.evidence = evidence;
      this.circuits = new ArrayList<>(vehicle.circuits());
      this.facts = new ArrayList<>(connector.cavities());
    }

    void take(Preview.Row row) {
      row.outcome()
          .ifPresent(
              outcome -> {
                if (outcome instanceof Outcome.OfCircuit it) {
                  circuit(row.number(), it);
                } else if (outcome instanceof Outcome.OfFact it) {
                  fact(row.number(), it);
                }
              });
    }

    private void circuit(int row, Outcome.OfCircuit it) {
      Circuit circuit = it.circuit();
      if (it.isNew()) {
        String id = unused(circuit.id());
        circuits.add(with(circuit, id, Notes.with(evidence, it.note())));
        changes.add(new Change(row, "new circuit '" + id + "'"));
        return;
      }
      // A mere note leaves standing how the rest is known.
      Evidence base = it.before().isEmpty() ? circuit.evidence().orElse(evidence) : evidence;
      Evidence now = Notes.with(Notes.with(base, it.note()), it.before());
      circuits.replaceAll(
          on -> on.id().equals(circuit.id()) ? with(circuit, circuit.id(), now) : on);
      changes.add(new Change(row, "changed circuit '" + circuit.id() + "'"));
    }

    private void fact(int row, Outcome.OfFact it) {
      CavityFact fact = it.fact();
      Optional<CavityFact> old = connector.cavity(fact.cavity());
      boolean onlyNote = old.isPresent() && old.get().equals(fact);
      Evidence base = onlyNote ? fact.evidence().orElse(evidence) : evidence;
      String earlier =
          onlyNote ? "" : old.flatMap(CavityFact::evidence).flatMap(Evidence::note).orElse("");
      Optional<String> kept = earlier.isEmpty() ? Optional.empty() : Optional.of(earlier);
      CavityFact now =
          new CavityFact(
              fact.cavity(),
              fact.pluggedWhen(),
              fact.blockedWhen(),
              fact.tell(),
              Optional.of(Notes.with(Notes.with(base, it.note()), kept)));
      if (old.equals(Optional.of(now))) {
        return;
      }
      facts.removeIf(on -> on.cavity().equals(fact.cavity()));
      facts.add(
          old.map(connector.cavities()::indexOf)
              .filter(at -> at <= facts.size())
              .orElse(facts.size()),
          now);
      changes.add(new Change(row, "cavity " + fact.cavity() + " of '" + connector.id() + "'"));
    }

    private String unused(String wanted) {
      Set<String> ids = new HashSet<>();
      circuits.forEach(it -> ids.add(it.id()));
      String id = wanted;
      for (int n = 2; ids.contains(id); n++) {
        id = wanted + "-" + n;
      }
      return id;
    }

    Accepted done() {
      return new Accepted(
          changes.isEmpty()
              ? vehicle
              : Copies.with(vehicle, Copies.with(connector, facts), circuits),
          changes);
    }

    private static Circuit with(Circuit it, String id, Evidence evidence) {
      return Copies.with(it, id, evidence);
    }
  }
}
