package org.loomwright.model.workspace;

import java.util.HashMap;
import java.util.Map;
import org.loomwright.model.parts.Clip;
import org.loomwright.model.parts.Covering;
import org.loomwright.model.parts.CoveringForm;
import org.loomwright.model.parts.Fuse;
import org.loomwright.model.parts.Grommet;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.parts.Parts;
import org.loomwright.model.parts.Ring;
import org.loomwright.model.parts.Seal;
import org.loomwright.model.parts.Splice;
import org.loomwright.model.parts.Sundry;
import org.loomwright.model.parts.Terminal;
import org.loomwright.model.parts.Wire;
import org.loomwright.model.picture.Pictures;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.quantity.Resistance;

/** Checks a parts list. A part number names one part of a list, whatever its sort. */
final class PartsChecks {
  private final Scope scope;
  private final Parts list;
  private final PartNames parts;
  private final Pictures pictures;

  private PartsChecks(Scope scope, Parts list, PartNames parts, Pictures pictures) {
    this.scope = scope;
    this.list = list;
    this.parts = parts;
    this.pictures = pictures;
  }

  static void check(Scope scope, Parts list, PartNames parts, Pictures pictures) {
    new PartsChecks(scope, list, parts, pictures).checkAll();
  }

  private void checkAll() {
    Map<String, String> seen = new HashMap<>();
    scope.unique(list.wires(), "id", Wire::id, seen);
    scope.unique(list.housings(), "id", Housing::id, seen);
    scope.unique(list.terminals(), "id", Terminal::id, seen);
    scope.unique(list.seals(), "id", Seal::id, seen);
    scope.unique(list.rings(), "id", Ring::id, seen);
    scope.unique(list.splices(), "id", Splice::id, seen);
    scope.unique(list.fuses(), "id", Fuse::id, seen);
    scope.unique(list.coverings(), "id", Covering::id, seen);
    scope.unique(list.grommets(), "id", Grommet::id, seen);
    scope.unique(list.clips(), "id", Clip::id, seen);
    scope.unique(list.sundries(), "id", Sundry::id, seen);
    for (Wire it : list.wires()) {
      positive(it, "diameter", it.diameter());
      positive(it, "spool", it.spool());
      if (scope.sound(it) && it.colours().isEmpty()) {
        scope.problem(it, "colours", "", "a wire needs at least one colour it can be bought in");
      }
    }
    list.housings().forEach(it -> HousingChecks.check(scope, it, list.sundries(), parts, pictures));
    for (Terminal it : list.terminals()) {
      scope.ordered(it, "wireLeast", it.wireLeast(), "wireMost", it.wireMost());
      scope.ordered(
          it, "insulationLeast", it.insulationLeast(), "insulationMost", it.insulationMost());
      positive(it, "strip", it.strip());
      scope.aboveZero(it, "currentLimit", it.currentLimit().amperes(), it.currentLimit().text());
      it.contactResistance().ifPresent(of -> positive(it, "contactResistance", of));
      CurrentTableChecks.check(scope, it);
      it.seal().ifPresent(seal -> scope.reference(it, "seal", parts.names(), Sort.SEAL, seal));
    }
    for (Seal it : list.seals()) {
      scope.ordered(
          it, "insulationLeast", it.insulationLeast(), "insulationMost", it.insulationMost());
    }
    for (Ring it : list.rings()) {
      scope.ordered(it, "wireLeast", it.wireLeast(), "wireMost", it.wireMost());
      positive(it, "strip", it.strip());
      it.currentLimit()
          .ifPresent(most -> scope.aboveZero(it, "currentLimit", most.amperes(), most.text()));
      if (it.insulationLeast().isPresent() && it.insulationMost().isPresent()) {
        scope.ordered(
            it,
            "insulationLeast",
            it.insulationLeast().get(),
            "insulationMost",
            it.insulationMost().get());
      }
    }
    for (Splice it : list.splices()) {
      scope.ordered(it, "areaLeast", it.areaLeast(), "areaMost", it.areaMost());
      positive(it, "strip", it.strip());
      it.insulationMost().ifPresent(most -> positive(it, "insulationMost", most));
      it.resistance().ifPresent(of -> positive(it, "resistance", of));
    }
    for (Fuse it : list.fuses()) {
      scope.aboveZero(it, "rating", it.rating().amperes(), it.rating().text());
      it.resistance().ifPresent(of -> positive(it, "resistance", of));
    }
    for (Covering it : list.coverings()) {
      covering(it);
    }
    for (Grommet it : list.grommets()) {
      scope.ordered(it, "holeLeast", it.holeLeast(), "holeMost", it.holeMost());
      scope.ordered(it, "bundleLeast", it.bundleLeast(), "bundleMost", it.bundleMost());
      scope.ordered(it, "bundleMost", it.bundleMost(), "holeMost", it.holeMost());
    }
    for (Clip it : list.clips()) {
      scope.ordered(it, "bundleLeast", it.bundleLeast(), "bundleMost", it.bundleMost());
    }
  }

  private void covering(Covering it) {
    positive(it, "bundleMost", it.bundleMost());
    it.wall().ifPresent(wall -> positive(it, "wall", wall));
    it.tapeWidth().ifPresent(width -> positive(it, "tapeWidth", width));
    it.inner().ifPresent(inner -> scope.ordered(it, "bundleMost", it.bundleMost(), "inner", inner));
    if (scope.sound(it)
        && it.tapeWidth().isPresent()
        && it.form()
            .filter(form -> form == CoveringForm.TAPE || form == CoveringForm.CLOTH_TAPE)
            .isEmpty()) {
      scope.problem(
          it,
          "tapeWidth",
          it.tapeWidth().get().text(),
          "only a tape has a width of its own; write \"form\": \"tape\" or \"cloth-tape\", or"
              + " leave the key out");
    }
    if (scope.sound(it)
        && it.inner().isPresent()
        && it.form().filter(CoveringForm.CONDUIT::equals).isEmpty()) {
      scope.problem(
          it,
          "inner",
          it.inner().get().text(),
          "only a conduit has an inner diameter of its own; write \"form\": \"conduit\", or leave"
              + " the key out");
    }
  }

  private void positive(Object owner, String key, Resistance resistance) {
    scope.aboveZero(owner, key, resistance.ohms(), resistance.text());
  }

  private void positive(Object owner, String key, Length length) {
    scope.aboveZero(owner, key, length.mm(), length.text());
  }
}
