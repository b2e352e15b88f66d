package org.loomwright.papers.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.loomwright.drawing.CavityMark;
import org.loomwright.drawing.Lettering;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.workspace.KitOrders;
import org.loomwright.model.workspace.Read;
import org.loomwright.model.workspace.WorkspaceReader;
import org.loomwright.papers.section.Pack;
import org.loomwright.papers.section.PackDocument;
import org.loomwright.planner.plan.Planner;

/** The faces of the demo, each state looked up by hand in its vehicle. */
class FaceUseTest {
  private static Names names;

  @BeforeAll
  static void planTheDemo() {
    Read.Good demo = (Read.Good) WorkspaceReader.read(Path.of("..", "demo"));
    KitOrder order =
        ((KitOrders.Found) KitOrders.resolve(demo.workspace(), "crew-comfort")).order();
    names = new Names(order, Planner.plan(order));
  }

  @Test
  void tellsWhatIsInEachSlotBeforeTheKitComes() {
    FaceUse block = use("rear-block");

    assertThat(block.states())
        .containsExactlyInAnyOrderEntriesOf(
            Map.ofEntries(
                // Factory wires on every build.
                Map.entry("F1", CavityMark.WIRED),
                Map.entry("F2", CavityMark.WIRED),
                Map.entry("F11", CavityMark.WIRED),
                // Its only wire is taped back at the rear quarter.
                Map.entry("F5", CavityMark.LOOSE),
                // No metal.
                Map.entry("F4", CavityMark.BLOCKED),
                Map.entry("F6", CavityMark.BLOCKED),
                Map.entry("F12", CavityMark.BLOCKED),
                // Wired on some builds; metal not known.
                Map.entry("F3", CavityMark.UNKNOWN),
                Map.entry("F7", CavityMark.UNKNOWN),
                Map.entry("F10", CavityMark.UNKNOWN),
                Map.entry("F8", CavityMark.UNKNOWN),
                Map.entry("F9", CavityMark.EMPTY)));
    assertThat(block.marks())
        .containsEntry("F7", CavityMark.FILLED)
        .containsEntry("F5", CavityMark.LOOSE);
    assertThat(block.photo()).isPresent();
  }

  @Test
  void tellsPlugsAndBlockedCavities() {
    assertThat(use("floor").states())
        .isEqualTo(
            Map.of(
                "1",
                CavityMark.PLUGGED,
                "2",
                CavityMark.UNKNOWN,
                "3",
                CavityMark.PLUGGED,
                "4",
                CavityMark.BLOCKED,
                "5",
                CavityMark.PLUGGED,
                "6",
                CavityMark.PLUGGED));
  }

  @Test
  void thePackHasTheFacesTheirLegendAndThePhoto() {
    String markup = PackDocument.of(new Pack(names, Lettering.text()));

    // The photo, and the van's plan under the run map.
    assertThat(markup.split("<image ", -1)).hasSize(3);
    assertThat(markup)
        .contains(
            "data:image/png;base64,",
            "Photo, wire side (rear-block-wire-side.png)",
            "wired by the factory: F1, F2, F11",
            "wired by the factory, other end loose: F5",
            "blocked, nothing can go in: F4, F6, F12",
            "not the same on every build, or not known: F10",
            "dotted frame: not the same on every build, or not known",
            "secondary lock: white lock comb");
  }

  @Test
  void withoutThePictureThePackHasNoPhoto() {
    KitOrder order = names.order();
    KitOrder without =
        new KitOrder(order.kit(), order.vehicle(), order.equipment(), order.parts(), order.rules());
    assertThat(PackDocument.of(new Pack(new Names(without, names.plan()), Lettering.text())))
        .doesNotContain("<image ", "Photo, ");
  }

  private static FaceUse use(String owner) {
    List<FaceUse> uses = FaceUse.of(names).stream().filter(it -> it.owner().equals(owner)).toList();
    assertThat(uses).hasSize(1);
    return uses.get(0);
  }
}
