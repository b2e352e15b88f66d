package org.loomwright.planner.electrics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.equipment.Need;
import org.loomwright.model.equipment.Plug;
import org.loomwright.planner.fixture.Bits;
import org.loomwright.planner.fixture.SmallCar;
import org.loomwright.planner.need.NeedAt;
import org.loomwright.planner.need.Needs;
import org.loomwright.planner.plan.With;

/** Which ground a load returns by. */
class ReturnsTest {
  private static final Need SUPPLY = Bits.supply("30", 3);

  @Test
  void aNamedPinCountsBeforeAllOthers() {
    List<NeedAt> needs =
        needs(
            Bits.plug(
                "p",
                Bits.pin("1", With.changed(SUPPLY, "returnsBy", Optional.of("q 3"))),
                Bits.pin("2", Bits.ground(9))),
            Bits.plug("q", Bits.pin("2", Bits.ground(8)), Bits.pin("3", Bits.ground(1))));
    assertThat(ground(needs, "e/p/1")).contains("e/q/3");
  }

  @Test
  void elseTheGroundOfItsPlugThatReturnsMost() {
    List<NeedAt> needs =
        needs(
            Bits.plug(
                "p",
                Bits.pin("1", SUPPLY),
                Bits.pin("2", Bits.ground(2)),
                Bits.pin("3", Bits.ground(4)),
                Bits.pin("4", Bits.ground(1))),
            Bits.plug("q", Bits.pin("2", Bits.ground(9))));
    assertThat(ground(needs, "e/p/1")).contains("e/p/3");
  }

  @Test
  void elseTheGroundOfTheEquipmentThatReturnsMost() {
    List<NeedAt> needs =
        needs(
            Bits.plug("p", Bits.pin("1", SUPPLY)),
            Bits.plug("q", Bits.pin("2", Bits.ground(4)), Bits.pin("3", Bits.ground(6))));
    assertThat(ground(needs, "e/p/1")).contains("e/q/3");
  }

  @Test
  void groundsOfOtherEquipmentDoNotCount() {
    Equipment one = Bits.equipment("e", Bits.plug("p", Bits.pin("1", SUPPLY)));
    Equipment other = Bits.equipment("f", Bits.plug("p", Bits.pin("2", Bits.ground(9))));
    List<NeedAt> needs =
        Needs.of(
            Bits.order(
                SmallCar.car(1).build(),
                List.of(one, other),
                List.of(Bits.on("e", "p", "k"), Bits.at("f", "p", "rear"))));
    assertThat(ground(needs, "e/p/1")).isEmpty();
    assertThat(ground(needs, "f/p/2")).isEmpty();
  }

  /** A pin whose plug is not part of the kit leaves the usual choice. */
  @Test
  void aNamedPinThatTheKitDoesNotFitIsPassedOver() {
    List<NeedAt> needs =
        needs(
            Bits.plug(
                "p",
                Bits.pin("1", With.changed(SUPPLY, "returnsBy", Optional.of("q 3"))),
                Bits.pin("2", Bits.ground(9))));
    assertThat(ground(needs, "e/p/1")).contains("e/p/2");
  }

  /** Of grounds that return alike the first by name, in whatever order they come. */
  @Test
  void theOrderOfPinsDoesNotMatter() {
    List<NeedAt> needs =
        new ArrayList<>(
            needs(
                Bits.plug(
                    "p",
                    Bits.pin("1", SUPPLY),
                    Bits.pin("4", Bits.ground(4)),
                    Bits.pin("2", Bits.ground(4)),
                    Bits.pin("3", Bits.ground(4)))));
    long seed = new Random().nextLong();
    Random random = new Random(seed);
    for (int i = 0; i < 20; i++) {
      Collections.shuffle(needs, random);
      assertThat(ground(needs, "e/p/1")).as("seed %s", seed).contains("e/p/2");
    }
  }

  private static List<NeedAt> needs(Plug... plugs) {
    Equipment equipment = Bits.equipment("e", plugs);
    return Needs.of(
        Bits.order(
            SmallCar.car(1).build(),
            List.of(equipment),
            equipment.plugs().stream().map(it -> Bits.at("e", it.id(), "rear")).toList()));
  }

  private static Optional<String> ground(List<NeedAt> needs, String need) {
    NeedAt at = needs.stream().filter(it -> it.id().equals(need)).findFirst().orElseThrow();
    return Returns.of(at, needs).map(NeedAt::id);
  }
}
