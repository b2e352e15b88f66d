package org.loomwright.papers.words;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.drawing.CavityMark;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.SuppliedHousing;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.FacePhoto;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.vehicle.View;

/**
 * What a kit does to one connector, fuse block or supplied housing.
 *
 * @param owner id of it
 * @param name its name
 * @param place where it is, in words
 * @param housing its face
 * @param fitterView how the fitter sees it; empty for a housing filled on the bench
 * @param fuseBlock whether it is a fuse block, whose cavities are slots
 * @param filled cavities filled, with what goes into them
 * @param plugged cavities closed with a plug
 * @param states what is in the other cavities before the kit comes, as far as it is known
 * @param photo photo of it, else of the loose part
 */
public record FaceUse(
    String owner,
    String name,
    String place,
    Housing housing,
    Optional<View> fitterView,
    boolean fuseBlock,
    List<Filled> filled,
    List<String> plugged,
    Map<String, CavityMark> states,
    Optional<FacePhoto> photo) {
  public FaceUse {
    filled = List.copyOf(filled);
    plugged = List.copyOf(plugged);
    states = Collections.unmodifiableMap(new LinkedHashMap<>(states));
  }

  /**
   * A filled cavity.
   *
   * @param cavity number as moulded
   * @param what lead and end, in words
   * @param cases cases in which it is filled; empty when in all
   */
  public record Filled(String cavity, String what, List<String> cases) {
    public Filled {
      cases = List.copyOf(cases);
    }
  }

  /** What a cavity of it is called: "slot" in a fuse block. */
  public String cavityWord() {
    return fuseBlock ? "slot" : "cavity";
  }

  /** What is told of each cavity: what the kit does to it, else what is in it before. */
  public Map<String, CavityMark> marks() {
    Map<String, CavityMark> marks = new LinkedHashMap<>(states);
    plugged.forEach(it -> marks.put(it, CavityMark.PLUGGED));
    filled.forEach(it -> marks.put(it.cavity(), CavityMark.FILLED));
    marks.keySet().removeIf(it -> housing.cavity(it).isEmpty());
    return marks;
  }

  /** The faces a kit touches: connectors, fuse blocks with a face on file, supplied housings. */
  public static List<FaceUse> of(Names names) {
    List<FaceUse> uses = new ArrayList<>();
    Vehicle vehicle = names.order().vehicle();
    for (Connector it : vehicle.connectors()) {
      touched(names, it.id(), it.housing(), List.of())
          .ifPresent(
              face ->
                  uses.add(
                      new FaceUse(
                          it.id(),
                          it.name(),
                          names.place(it.place()),
                          face.housing(),
                          Optional.of(it.view()),
                          false,
                          face.filled(),
                          List.of(),
                          FaceStates.of(vehicle, it, face.housing()),
                          it.photo().or(face.housing()::photo))));
    }
    for (FuseBlock it : vehicle.fuseBlocks()) {
      it.face()
          .flatMap(part -> touched(names, it.id(), part, List.of()))
          .ifPresent(
              face ->
                  uses.add(
                      new FaceUse(
                          it.id(),
                          it.name(),
                          names.place(it.place()),
                          face.housing(),
                          Optional.of(it.view()),
                          true,
                          face.filled(),
                          List.of(),
                          FaceStates.of(vehicle, it, face.housing()),
                          it.photo().or(face.housing()::photo))));
    }
    for (SuppliedHousing it : names.plan().design().housings()) {
      touched(names, it.id(), it.part(), it.plugged())
          .ifPresent(
              face ->
                  uses.add(
                      new FaceUse(
                          it.id(),
                          names.owner(it.id()),
                          names.place(it.place()),
                          face.housing(),
                          Optional.empty(),
                          false,
                          face.filled(),
                          it.plugged(),
                          FaceStates.empty(face.housing()),
                          face.housing().photo())));
    }
    return List.copyOf(uses);
  }

  private record Touched(Housing housing, List<Filled> filled) {}

  private static Optional<Touched> touched(
      Names names, String owner, String housingPart, List<String> plugged) {
    List<Filled> filled = new ArrayList<>();
    for (Lead lead : names.plan().design().leads()) {
      collect(filled, owner, lead.id(), "A", lead.a());
      collect(filled, owner, lead.id(), "B", lead.b());
    }
    return filled.isEmpty() && plugged.isEmpty()
        ? Optional.empty()
        : names
            .order()
            .parts()
            .housing(housingPart)
            .map(housing -> new Touched(housing, inOrder(housing, filled)));
  }

  private static void collect(
      List<Filled> filled, String owner, String leadId, String endName, LeadEnd end) {
    for (EndUse use : end.uses()) {
      cavity(use.landing(), owner)
          .ifPresent(
              cavity ->
                  filled.add(
                      new Filled(
                          cavity,
                          leadId + ", end " + endName,
                          end.uses().size() == 1 ? List.of() : use.cases())));
    }
  }

  private static Optional<String> cavity(Landing landing, String owner) {
    if (landing instanceof Landing.InCavity it && it.connector().equals(owner)) {
      return Optional.of(it.cavity());
    }
    if (landing instanceof Landing.InHousing it && it.housing().equals(owner)) {
      return Optional.of(it.cavity());
    }
    if (landing instanceof Landing.InSlot it && it.block().equals(owner)) {
      return Optional.of(it.slot());
    }
    return Optional.empty();
  }

  private static List<Filled> inOrder(Housing housing, List<Filled> filled) {
    List<String> order = housing.cavities().stream().map(it -> it.number()).toList();
    return filled.stream()
        .sorted(
            java.util.Comparator.comparingInt(
                    (Filled it) -> {
                      int at = order.indexOf(it.cavity());
                      return at < 0 ? order.size() : at;
                    })
                .thenComparing(Filled::what))
        .toList();
  }
}
