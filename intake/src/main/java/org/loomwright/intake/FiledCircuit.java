package org.loomwright.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.quantity.Current;
import org.loomwright.model.vehicle.Circuit;
import org.loomwright.model.vehicle.Spot;
import org.loomwright.model.vehicle.Vehicle;

/**
 * A circuit on file beside what a row says of it.
 *
 * @param changed the circuit with what the row says put in place
 * @param differences what is on file otherwise
 * @param note what of the row is to be noted with it
 * @param before what is replaced, in words
 */
record FiledCircuit(
    Circuit changed, List<Difference> differences, Optional<String> note, Optional<String> before) {
  FiledCircuit {
    differences = List.copyOf(differences);
  }

  static FiledCircuit compare(Circuit on, RowFacts row, Spot here, Vehicle vehicle) {
    List<Difference> facts = new ArrayList<>();
    boolean size = row.size().map(it -> it.areaMm2() != on.wire().areaMm2()).orElse(false);
    if (size) {
      facts.add(new Difference("wire size", on.wire().label(), row.size().orElseThrow().label()));
    }
    boolean colour = row.colour().map(it -> !it.all().equals(on.colour().all())).orElse(false);
    if (colour) {
      facts.add(
          new Difference("wire colour", on.colour().text(), row.colour().orElseThrow().text()));
    }
    boolean rating =
        row.rating()
            .map(it -> on.fuse().map(Current::amperes).map(old -> old != it.amperes()).orElse(true))
            .orElse(false);
    if (rating) {
      facts.add(
          new Difference(
              "fuse",
              on.fuse().map(Current::text).orElse("none"),
              row.rating().orElseThrow().text()));
    }
    CircuitDraft.Ends old = new CircuitDraft.Ends(on.from(), on.to());
    CircuitDraft.Ends ends =
        CircuitDraft.ends(row, here, Optional.empty())
            .filter(it -> !old.all().containsAll(it.all()))
            .orElse(old);
    if (!ends.equals(old)) {
      facts.add(new Difference("ends", words(old), words(ends)));
    }
    Optional<CircuitDraft.Carries> carries =
        row.feed()
            .map(CircuitDraft::stated)
            .filter(it -> it.kind() != on.kind() || !on.feed().equals(Optional.of(it.feed())));
    carries.ifPresent(
        it ->
            facts.add(
                new Difference(
                    "supply kind",
                    RowJudge.words(on.kind()) + on.feed().map(feed -> " " + feed).orElse(""),
                    RowJudge.words(it.kind()) + " " + it.feed())));
    Circuit changed =
        new Circuit(
            on.id(),
            on.name(),
            carries.map(CircuitDraft.Carries::kind).orElse(on.kind()),
            carries.map(CircuitDraft.Carries::feed).or(on::feed),
            ends.from(),
            ends.to(),
            size ? row.size().orElseThrow() : on.wire(),
            on.length(),
            colour ? row.colour().orElseThrow() : on.colour(),
            colour ? row.colourAsSeen() : on.colourAsSeen().or(row::colourAsSeen),
            on.presentWhen(),
            on.tell(),
            rating ? row.rating() : on.fuse(),
            rating ? Optional.empty() : on.fuseForm(),
            on.load(),
            on.reachedAt(),
            on.restraint(),
            on.evidence());
    Optional<String> note = note(on, row);
    List<Difference> all = new ArrayList<>(facts);
    if (!Notes.has(on.evidence(), note)) {
      all.add(
          new Difference(
              "note", on.evidence().flatMap(it -> it.note()).orElse("none"), note.orElse("")));
    }
    Optional<String> before =
        facts.isEmpty()
            ? Optional.empty()
            : Optional.of(
                "on file before: "
                    + String.join(
                        ", ", facts.stream().map(it -> it.what() + " " + it.onFile()).toList())
                    + on.evidence().map(it -> " (" + it.words() + ")").orElse(""));
    // A code for the same colour is worth no question; it comes along when something else does.
    return new FiledCircuit(changed, all, note, before);
  }

  /** The circuit keeps its name; another one that the table has for it is noted. */
  private static Optional<String> note(Circuit on, RowFacts row) {
    String slug = FarEnd.slug(row.name().orElse(""));
    boolean sameName =
        row.name().isEmpty()
            || slug.equals(on.id())
            || slug.equals(FarEnd.slug(on.name()))
            || row.name().get().equals(on.name());
    String called = sameName ? "" : "called '" + row.name().orElseThrow() + "'";
    String joined = Notes.joined(called, row.note().orElse(""));
    return joined.isEmpty() ? Optional.empty() : Optional.of(joined);
  }

  private static String words(CircuitDraft.Ends ends) {
    return ends.from().text()
        + " to "
        + String.join(", ", ends.to().stream().map(Spot::text).toList());
  }
}
