package org.loomwright.papers.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.design.EndUse;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.model.design.SuppliedHousing;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.FuseBlock;
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
 */
public record FaceUse(
    String owner,
    String name,
    String place,
    Housing housing,
    Optional<View> fitterView,
    boolean fuseBlock,
    List<Filled> filled,
    List<String> plugged) {
  public FaceUse {
    filled = List.copyOf(filled);
    plugged = List.copyOf(plugged);
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

  /** The faces a kit touches: connectors, fuse blocks with a face on file, supplied housings. */
  public static List<FaceUse> of(Names names) {
    List<FaceUse> uses = new ArrayList<>();
    for (Connector it : names.order().vehicle().connectors()) {
      add(
          uses,
          names,
          it.id(),
          it.name(),
          it.place(),
          it.housing(),
          Optional.of(it.view()),
          List.of());
    }
    for (FuseBlock it : names.order().vehicle().fuseBlocks()) {
      it.face()
          .ifPresent(
              face ->
                  add(
                      uses,
                      names,
                      it.id(),
                      it.name(),
                      it.place(),
                      face,
                      Optional.of(it.view()),
                      List.of()));
    }
    for (SuppliedHousing it : names.plan().design().housings()) {
      add(
          uses,
          names,
          it.id(),
          names.owner(it.id()),
          it.place(),
          it.part(),
          Optional.empty(),
          it.plugged());
    }
    return List.copyOf(uses);
  }

  private static void add(
      List<FaceUse> uses,
      Names names,
      String owner,
      String name,
      String place,
      String housingPart,
      Optional<View> view,
      List<String> plugged) {
    List<Filled> filled = new ArrayList<>();
    for (Lead lead : names.plan().design().leads()) {
      collect(filled, owner, lead.id(), "A", lead.a());
      collect(filled, owner, lead.id(), "B", lead.b());
    }
    if (filled.isEmpty() && plugged.isEmpty()) {
      return;
    }
    names
        .order()
        .parts()
        .housing(housingPart)
        .ifPresent(
            housing ->
                uses.add(
                    new FaceUse(
                        owner,
                        name,
                        names.place(place),
                        housing,
                        view,
                        names.order().vehicle().fuseBlock(owner).isPresent(),
                        inOrder(housing, filled),
                        plugged)));
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
