package org.loomwright.model.workspace;

import java.util.Optional;
import org.loomwright.model.finding.Finding;
import org.loomwright.model.finding.FindingState;
import org.loomwright.model.finding.FoundAt;
import org.loomwright.model.json.Paths;
import org.loomwright.model.kit.Kit;

/**
 * Checks a finding. What an open one concerns must be there. One that was decided is a record of
 * its day: the connector it was about may be gone because of it.
 */
final class FindingChecks {
  private final Scope scope;
  private final Finding finding;
  private final Library library;

  private FindingChecks(Scope scope, Finding finding, Library library) {
    this.scope = scope;
    this.finding = finding;
    this.library = library;
  }

  static void check(Scope scope, Finding finding, Library library) {
    new FindingChecks(scope, finding, library).checkAll();
  }

  private void checkAll() {
    scope.reference(finding, "vehicle", library.documents(), Sort.VEHICLE, finding.vehicle());
    Days.check(scope, finding, "when", finding.when());
    state();
    Photos.once(scope, finding.photos());
    comeback();
    if (finding.isOpen()) {
      finding
          .job()
          .ifPresent(it -> scope.reference(finding, "job", library.documents(), Sort.JOB, it));
      library
          .find(Sort.VEHICLE, finding.vehicle())
          .map(library::names)
          .ifPresent(
              names -> {
                finding.at().ifPresent(it -> at(it, names));
                finding.traits().forEach((trait, value) -> trait(trait, value, names));
              });
    }
  }

  private void state() {
    if (!scope.sound(finding)) {
      return;
    }
    if (!finding.isOpen() && finding.outcome().isEmpty()) {
      scope.problem(
          finding,
          "outcome",
          "",
          finding.state() == FindingState.ACCEPTED
              ? "an accepted finding says what was done about it"
              : "a finding that was set aside says why nothing follows from it");
    }
    if (finding.state() != FindingState.ACCEPTED && finding.takenInto().isPresent()) {
      scope.problem(
          finding,
          "takenInto",
          finding.takenInto().get(),
          "only an accepted finding is taken into a revision of the vehicle; accept it, or leave"
              + " this out");
    }
  }

  private void comeback() {
    boolean alone = finding.kit().isEmpty() && scope.sound(finding);
    if (finding.lead().isPresent() && alone) {
      scope.problem(
          finding, "kit", "", "a lead is one of a kit: say which kit, or leave the lead out");
    }
    if (finding.step().isPresent() && alone) {
      scope.problem(
          finding,
          "kit",
          "",
          "a step is one of a kit's guide: say which kit, or leave the step out");
    }
    if (!finding.isOpen() || finding.kit().isEmpty()) {
      return;
    }
    String kit = finding.kit().get();
    scope.reference(finding, "kit", library.documents(), Sort.KIT, kit);
    library
        .find(Sort.KIT, kit)
        .flatMap(it -> it.document(Kit.class))
        .map(Kit::vehicle)
        .filter(it -> !it.isEmpty() && !it.equals(finding.vehicle()))
        .filter(it -> library.find(Sort.VEHICLE, finding.vehicle()).isPresent())
        .ifPresent(
            it ->
                scope.problem(
                    finding,
                    "kit",
                    kit,
                    "kit '" + kit + "' is for vehicle '" + it + "', not for this one"));
  }

  private void at(FoundAt at, VehicleNames names) {
    Optional<String> wrong =
        switch (at.sort()) {
          case PLACE -> names.names().wrong(Sort.PLACE, at.id());
          case CONNECTOR -> names.names().wrong(Sort.CONNECTOR, at.id());
          case CAVITY -> names.names().wrong(Sort.CONNECTOR, at.id()).or(() -> cavity(at, names));
          case BLOCK -> names.names().wrong(Sort.BLOCK, at.id());
          case SLOT -> names.names().wrong(Sort.BLOCK, at.id()).or(() -> slot(at, names));
          case GROUND -> names.names().wrong(Sort.GROUND, at.id());
          case CIRCUIT -> names.names().wrong(Sort.CIRCUIT, at.id());
          case RUN -> names.names().wrong(Sort.RUN, at.id());
        };
    wrong.ifPresent(message -> scope.problem(finding, "at", at.text(), message));
  }

  private Optional<String> cavity(FoundAt at, VehicleNames names) {
    return names
        .housing(at.id())
        .flatMap(it -> library.parts().wrongCavity(it, at.part().orElseThrow()));
  }

  private static Optional<String> slot(FoundAt at, VehicleNames names) {
    return names.inBlock(at.id()).flatMap(it -> it.wrong(Sort.SLOT, at.part().orElseThrow()));
  }

  private void trait(String trait, String value, VehicleNames names) {
    if (!value.isEmpty()) {
      names
          .wrongSeen(trait, value)
          .ifPresent(message -> scope.problem(finding, Paths.key("traits", trait), value, message));
    }
  }
}
