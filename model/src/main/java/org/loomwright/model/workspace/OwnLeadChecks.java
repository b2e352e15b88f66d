package org.loomwright.model.workspace;

import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.loomwright.model.condition.Expr;
import org.loomwright.model.kit.Kit;
import org.loomwright.model.kit.OwnEnd;
import org.loomwright.model.kit.OwnLead;
import org.loomwright.model.parts.Parts;
import org.loomwright.model.parts.SundryUse;
import org.loomwright.model.parts.Wire;
import org.loomwright.model.vehicle.GroundStud;
import org.loomwright.model.vehicle.Vehicle;

/**
 * Checks the leads of the user's own: that their ends exist, are free, and can't make them live;
 * that wire for them is on file; that their conditions can be told.
 */
final class OwnLeadChecks {
  private static final String FROM = "from";
  private static final String TO = "to";

  private final Scope scope;
  private final Kit kit;
  private final Library library;
  private final Optional<Library.Entry> vehicle;
  private final OwnEndChecks ends;
  private final Map<String, String> taken = new HashMap<>();
  private final Map<String, Double> addedA = new HashMap<>();
  private final Map<String, Integer> addedLugs = new HashMap<>();

  OwnLeadChecks(Scope scope, Kit kit, Library library, Optional<Library.Entry> vehicle) {
    this.scope = scope;
    this.kit = kit;
    this.library = library;
    this.vehicle = vehicle;
    this.ends = new OwnEndChecks(scope, kit, library, vehicle);
  }

  void check() {
    scope.unique(kit.ownLeads(), "id", OwnLead::id);
    for (OwnLead lead : kit.ownLeads()) {
      if (!scope.sound(lead)) {
        continue;
      }
      scope.aboveZero(lead, "current", lead.current().amperes(), lead.current().text());
      when(lead);
      wire(lead);
      boolean from = ends.check(lead, FROM, lead.from());
      boolean to = ends.check(lead, TO, lead.to());
      if (from && to) {
        together(lead);
      }
    }
  }

  private void when(OwnLead lead) {
    lead.when()
        .ifPresent(
            when -> {
              if (when.isUnknown()) {
                scope.problem(
                    lead,
                    "when",
                    when.text(),
                    "on which builds a lead of your own is used can't be unknown: it is your"
                        + " choice; write a condition on traits, or leave 'when' out for all");
              } else if (when.expr() instanceof Expr.Never) {
                scope.problem(
                    lead,
                    "when",
                    when.text(),
                    "the lead would be used on no build; take it out of the kit, or say on which"
                        + " builds it is used");
              } else {
                vehicle.ifPresent(
                    it ->
                        library
                            .names(it)
                            .wrong(when)
                            .forEach(message -> scope.problem(lead, "when", when.text(), message)));
              }
            });
  }

  private void wire(OwnLead lead) {
    List<Parts> lists =
        kit.parts().stream()
            .flatMap(id -> library.find(Sort.PARTS, id).stream())
            .flatMap(it -> it.document(Parts.class).stream())
            .toList();
    if (lists.size() < kit.parts().size() || lists.isEmpty()) {
      return;
    }
    List<Wire> wires = lists.stream().flatMap(it -> it.wires().stream()).toList();
    List<Wire> sized =
        wires.stream()
            .filter(
                wire ->
                    lead.size()
                        .filter(it -> Math.abs(it.areaMm2() - wire.size().areaMm2()) > 1e-6)
                        .isEmpty())
            .toList();
    if (sized.isEmpty() && lead.size().isPresent()) {
      scope.problem(
          lead,
          "size",
          lead.size().get().text(),
          "no wire of this size is on the kit's parts lists; they have "
              + words(wires.stream().map(it -> it.size().text()).toList())
              + "; take one of these, or leave 'size' out for the smallest that carries the"
              + " current");
    } else if (lead.colour().isPresent()
        && sized.stream().noneMatch(it -> has(it, lead.colour().get().text()))) {
      scope.problem(
          lead,
          "colour",
          lead.colour().get().text(),
          "no wire "
              + lead.size().map(it -> "of " + it.text() + " ").orElse("")
              + "on the kit's parts lists can be bought in this colour; there is "
              + words(
                  sized.stream().flatMap(it -> it.colours().stream()).map(it -> it.text()).toList())
              + "; take one of these, or leave 'colour' out");
    }
    boolean capped =
        lead.when().isPresent()
            || lead.from() instanceof OwnEnd.Loose
            || lead.to() instanceof OwnEnd.Loose;
    if (capped
        && lists.stream()
            .flatMap(it -> it.sundries().stream())
            .noneMatch(it -> it.use() == SundryUse.END_CAP)) {
      scope.problem(
          lead,
          "",
          lead.id(),
          "an end of this lead is taped back under an end cap, and the kit's parts lists have"
              + " none; add a sundry part whose use is 'end-cap'");
    }
  }

  private static boolean has(Wire wire, String colour) {
    return wire.colours().stream().anyMatch(it -> it.text().equals(colour));
  }

  private static String words(List<String> texts) {
    return texts.stream().distinct().collect(Collectors.joining(", "));
  }

  /** What only both ends together make wrong. */
  private void together(OwnLead lead) {
    String from = ends.spot(lead.from());
    String to = ends.spot(lead.to());
    if (from.equals(to)) {
      scope.problem(
          lead,
          TO,
          lead.to().text(),
          "the lead ends where it begins; give it another end, e.g. 'loose PLACE'");
      return;
    }
    if (lead.from() instanceof OwnEnd.OfGround && lead.to() instanceof OwnEnd.OfGround) {
      scope.problem(
          lead,
          TO,
          lead.to().text(),
          "a lead between two ground studs takes over current of other things that nobody can"
              + " foretell; end it in a cavity or leave that end loose");
      return;
    }
    if (lead.from() instanceof OwnEnd.Loose
        && lead.to() instanceof OwnEnd.Loose
        && lead.when().isPresent()) {
      scope.problem(
          lead,
          "when",
          lead.when().get().text(),
          "with both ends loose the lead is laid and taped back alike on every build; leave 'when'"
              + " out, or end it somewhere");
    }
    once(lead, FROM, lead.from());
    once(lead, TO, lead.to());
    room(lead, FROM, lead.from());
    room(lead, TO, lead.to());
    reached(lead);
  }

  /** A cavity takes one wire. */
  private void once(OwnLead lead, String key, OwnEnd end) {
    if (end instanceof OwnEnd.OfCavity || end instanceof OwnEnd.OfPin) {
      String first = taken.putIfAbsent(ends.spot(end), lead.id());
      if (first != null) {
        scope.problem(
            lead,
            key,
            end.text(),
            "'"
                + first
                + "' ends in this cavity already, and a cavity takes one wire; take another");
      }
    }
  }

  /** Own leads together may not take more of a stud than there is; needs take what they leave. */
  private void room(OwnLead lead, String key, OwnEnd end) {
    Optional<GroundStud> found =
        end instanceof OwnEnd.OfGround it
            ? vehicle
                .flatMap(entry -> entry.document(Vehicle.class))
                .flatMap(on -> on.ground(it.ground()))
            : Optional.empty();
    if (found.isEmpty()) {
      return;
    }
    GroundStud stud = found.get();
    double currentA = addedA.merge(stud.id(), lead.current().amperes(), Double::sum);
    int lugs = addedLugs.merge(stud.id(), 1, Integer::sum);
    double roomA = stud.limit().amperes() - stud.baseLoad().amperes();
    String words =
        lugs > stud.lugsMost() - stud.lugs()
            ? "has lug positions left: "
                + (stud.lugsMost() - stud.lugs())
                + ", and leads of your own would take "
                + lugs
            : currentA > roomA + 1e-9
                ? "may carry "
                    + text(roomA)
                    + " A more than it does, and leads of your own would bring "
                    + text(currentA)
                    + " A"
                : "";
    if (!words.isEmpty()) {
      scope.problem(
          lead, key, end.text(), "ground stud '" + stud.id() + "' " + words + "; take another");
    }
  }

  private static String text(double number) {
    return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
  }

  private void reached(OwnLead lead) {
    Optional<String> from = ends.place(lead.from());
    Optional<String> to = ends.place(lead.to());
    Optional<Vehicle> on = vehicle.flatMap(it -> it.document(Vehicle.class));
    if (from.isPresent()
        && to.isPresent()
        && on.isPresent()
        && !RunChecks.reached(on.get(), Set.of(from.get())).contains(to.get())) {
      scope.problem(
          lead,
          TO,
          lead.to().text(),
          "no usable run leads from '"
              + from.get()
              + "' to '"
              + to.get()
              + "'; add the run to the vehicle, or take another end");
    }
  }
}
