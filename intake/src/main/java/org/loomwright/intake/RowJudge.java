package org.loomwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.condition.Expr;
import org.loomwright.model.parts.Cavity;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.vehicle.CavityFact;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.Spot;
import org.loomwright.model.vehicle.Vehicle;

/** Decides what a row becomes and how it stands to what is on file. */
final class RowJudge {
  private final Connector connector;
  private final Housing housing;
  private final Vehicle vehicle;
  private final Assumptions assumptions;

  RowJudge(Connector connector, Housing housing, Vehicle vehicle, Assumptions assumptions) {
    this.connector = connector;
    this.housing = housing;
    this.vehicle = vehicle;
    this.assumptions = assumptions;
  }

  /**
   * Judges a row.
   *
   * @param more what is wrong with it for reasons outside the row
   * @param sound whether the table as a whole may be used
   */
  Preview.Row judge(RowFacts row, List<String> cells, List<CellRemark> more, boolean sound) {
    Verdict verdict = new Verdict(row, cells);
    verdict.remarks.addAll(row.remarks());
    verdict.remarks.addAll(more);
    boolean twice = more.stream().anyMatch(CellRemark::problem);
    if (row.cavity().isEmpty() || twice || !sound) {
      return verdict.problem(Optional.empty());
    }
    String number = row.cavity().get();
    Spot here = new Spot.OfCavity(connector.id(), number);
    List<Circuit> onFile = vehicle.circuits().stream().filter(it -> endsAt(it, here)).toList();
    if (row.filling() == RowFacts.Filling.WIRE) {
      wire(verdict, number, here, onFile);
    } else {
      noWire(verdict, onFile);
    }
    return verdict.isProblem() ? verdict.problem(kept(connector, row)) : verdict.row();
  }

  /** The texts of a row as a note of its cavity, for one that can't be more. */
  static Optional<Outcome> kept(Connector connector, RowFacts row) {
    return row.cavity()
        .filter(it -> row.all().isPresent())
        .map(it -> new Outcome.OfFact(fact(connector, it), row.all()));
  }

  private static CavityFact fact(Connector connector, String number) {
    return connector
        .cavity(number)
        .orElseGet(
            () ->
                new CavityFact(
                    number,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty()));
  }

  private static boolean endsAt(Circuit circuit, Spot here) {
    return circuit.from().equals(here) || circuit.to().contains(here);
  }

  private void wire(Verdict verdict, String number, Spot here, List<Circuit> onFile) {
    contradictions(verdict, number);
    if (verdict.isProblem()) {
      return;
    }
    if (!onFile.isEmpty()) {
      filed(verdict, number, here, onFile);
      return;
    }
    RowFacts row = verdict.row;
    Optional<CircuitDraft.Ends> ends = CircuitDraft.ends(row, here, assumptions.farEnd());
    List<String> missing = new ArrayList<>();
    if (row.size().isEmpty()) {
      missing.add("its wire size");
    }
    if (row.colour().isEmpty()) {
      missing.add("its colour");
    }
    if (ends.isEmpty()) {
      missing.add("where its other end is");
    }
    if (!missing.isEmpty()) {
      verdict.remark(
          "kept as a note of cavity "
              + number
              + "; to become a circuit the row must say "
              + String.join(" and ", missing));
      note(verdict, number, row.all());
      return;
    }
    Fact<CircuitDraft.Carries> carries = CircuitDraft.carries(row, ends.orElseThrow(), vehicle);
    if (carries instanceof Fact.Wrong<CircuitDraft.Carries> wrong) {
      verdict.problem(wrong.message());
      return;
    }
    CircuitDraft.Carries what = carries.known().orElseThrow();
    what.guess()
        .ifPresent(
            it ->
                verdict.remark(
                    "taken as a " + it + "; give a supply kind if it is something else"));
    verdict.outcome(
        Preview.State.NEW,
        new Outcome.OfCircuit(
            circuit(row, number, ends.orElseThrow(), what), true, row.note(), Optional.empty()));
  }

  private Circuit circuit(
      RowFacts row, String number, CircuitDraft.Ends ends, CircuitDraft.Carries carries) {
    String slug = FarEnd.slug(row.name().orElse(""));
    return new Circuit(
        slug.isEmpty() ? FarEnd.slug(connector.id() + "-" + number) : slug,
        row.name().orElse("the wire at cavity " + number + " of " + connector.name()),
        carries.kind(),
        Optional.of(carries.feed()),
        ends.from(),
        ends.to(),
        row.size().orElseThrow(),
        Optional.empty(),
        row.colour().orElseThrow(),
        row.colourAsSeen(),
        assumptions.presentWhen(),
        Optional.empty(),
        row.rating(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        connector.restraint(),
        Optional.empty());
  }

  private void contradictions(Verdict verdict, String number) {
    if (housing.cavity(number).map(Cavity::closed).orElse(false)) {
      verdict.problem(
          "cavity " + number + " is moulded closed, so no wire can end in it; correct the number");
    }
    CavityFact fact = fact(connector, number);
    boolean somewhere = !(assumptions.presentWhen().expr() instanceof Expr.Never);
    boolean everywhere = assumptions.presentWhen().expr() instanceof Expr.Always;
    if (somewhere && always(fact.blockedWhen())) {
      verdict.problem(
          "cavity "
              + number
              + " is on file as blocked on every build; correct the number, or what is on file first");
    }
    if (everywhere && always(fact.pluggedWhen())) {
      verdict.problem(
          "cavity "
              + number
              + " is on file as plugged on every build; correct what is on file, or say which"
              + " builds have these wires");
    }
  }

  private static boolean always(Optional<Condition> condition) {
    return condition.map(it -> it.expr() instanceof Expr.Always).orElse(false);
  }

  private void filed(Verdict verdict, String number, Spot here, List<Circuit> onFile) {
    RowFacts row = verdict.row;
    List<FiledCircuit> compared =
        onFile.stream().map(it -> FiledCircuit.compare(it, row, here, vehicle)).toList();
    Optional<FiledCircuit> match =
        compared.stream()
            .filter(it -> it.differences().isEmpty())
            .findFirst()
            .or(() -> compared.size() == 1 ? Optional.of(compared.get(0)) : named(compared, row));
    if (match.isEmpty()) {
      verdict.problem(
          "cavity "
              + number
              + " has "
              + onFile.size()
              + " circuits on file, and the row fits none of them: "
              + String.join(", ", onFile.stream().map(it -> "'" + it.name() + "'").toList())
              + "; name the one that is meant");
      return;
    }
    FiledCircuit it = match.get();
    verdict.differences.addAll(it.differences());
    if (it.differences().isEmpty()) {
      verdict.state = Preview.State.SAME;
    } else {
      verdict.outcome(
          Preview.State.CHANGES,
          new Outcome.OfCircuit(it.changed(), false, it.note(), it.before()));
    }
  }

  private static Optional<FiledCircuit> named(List<FiledCircuit> compared, RowFacts row) {
    String slug = FarEnd.slug(row.name().orElse(""));
    List<FiledCircuit> named =
        compared.stream()
            .filter(
                it ->
                    slug.equals(it.changed().id()) || slug.equals(FarEnd.slug(it.changed().name())))
            .toList();
    return named.size() == 1 ? Optional.of(named.get(0)) : Optional.empty();
  }

  private void noWire(Verdict verdict, List<Circuit> onFile) {
    RowFacts row = verdict.row;
    String number = row.cavity().orElseThrow();
    List<String> there =
        onFile.stream()
            .filter(it -> !(it.presentWhen().expr() instanceof Expr.Never))
            .map(it -> "'" + it.name() + "'")
            .toList();
    boolean says = row.filling() != RowFacts.Filling.UNSAID;
    if (!there.isEmpty() && says) {
      verdict.problem(
          "the table has no wire in cavity "
              + number
              + "; on file "
              + String.join(", ", there)
              + " ends there");
      return;
    }
    CavityFact old = fact(connector, number);
    Optional<Condition> plugged = old.pluggedWhen();
    Optional<Condition> blocked = old.blockedWhen();
    if (row.filling() == RowFacts.Filling.PLUGGED && !always(plugged)) {
      verdict.differs("plugged", plugged.map(Condition::text), "always");
      plugged = Optional.of(Condition.always());
    }
    if (row.filling() == RowFacts.Filling.BLOCKED && !always(blocked)) {
      verdict.differs("blocked", blocked.map(Condition::text), "always");
      blocked = Optional.of(Condition.always());
    }
    CavityFact now = new CavityFact(number, plugged, blocked, old.tell(), old.evidence());
    if (now.equals(old)) {
      note(verdict, number, row.all());
      return;
    }
    boolean known = connector.cavity(number).isPresent();
    verdict.outcome(
        known ? Preview.State.CHANGES : Preview.State.NEW, new Outcome.OfFact(now, row.all()));
  }

  /** Keeps words about a cavity, if they are not on file. */
  private void note(Verdict verdict, String number, Optional<String> note) {
    CavityFact old = fact(connector, number);
    if (Notes.has(old.evidence(), note)) {
      verdict.state = Preview.State.SAME;
      return;
    }
    boolean known = connector.cavity(number).isPresent();
    if (known) {
      verdict.differs("note", old.evidence().flatMap(it -> it.note()), note.orElse(""));
    }
    verdict.outcome(
        known ? Preview.State.CHANGES : Preview.State.NEW, new Outcome.OfFact(old, note));
  }

  static String words(CircuitKind kind) {
    return kind.name().toLowerCase(java.util.Locale.ROOT);
  }
}
