package org.loomwright.planner.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.loomwright.model.design.JointSpot;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.vehicle.CircuitKind;
import org.loomwright.model.vehicle.Run;
import org.loomwright.planner.fixture.Bits;
import org.loomwright.planner.fixture.SmallCar;
import org.loomwright.planner.landing.Touch;
import org.loomwright.planner.route.Route;
import org.loomwright.planner.ways.LeadDraft;

/** Places of joints on the small car: front, middle and rear, 1220 mm of bundle between two. */
class JointSpotsTest {
  private static final double SPACING_MM = 50;

  private final KitOrder order =
      Bits.order(
          SmallCar.car(1).build(),
          List.of(Bits.equipment("e", SmallCar.plug(Bits.supply("30", 3), 3))),
          List.of(Bits.on("e", "p", "k")));
  private final List<Strand> strands = new ArrayList<>();

  private void strand(Touch a, Touch b, String... runs) {
    List<Run> along = new ArrayList<>();
    for (String id : runs) {
      order.vehicle().runs().stream().filter(it -> it.id().equals(id)).forEach(along::add);
    }
    LeadDraft draft = new LeadDraft(CircuitKind.SUPPLY, a, b);
    Strand strand = new Strand("A", draft, Route.along(order.vehicle(), a.place(), along));
    strand.use("A1", draft, Set.of());
    strands.add(strand);
  }

  private static Touch joint(String id, String place) {
    return new Touch.AtJoint(id, place);
  }

  private static Touch ground(String id, String place) {
    return new Touch.AtGround(id, place);
  }

  /** Source from the front, one branch at the middle, one to the rear. */
  private void joint(int number) {
    String id = "J" + number;
    strand(new Touch.AtSlot("b", "f" + number, "front"), joint(id, "middle"), "front-middle");
    strand(joint(id, "middle"), ground("g" + number, "middle"));
    strand(joint(id, "middle"), ground("h" + number, "rear"), "middle-rear");
  }

  @Test
  void jointsFollowOneAnotherOnTheRunOfTheirSource() {
    for (int number = 1; number <= 3; number++) {
      joint(number);
    }
    Lengths lengths = new Lengths(order, strands);
    assertThat(lengths.joints())
        .containsExactly(
            new JointSpot("J1", "middle", Optional.of("front-middle"), SPACING_MM),
            new JointSpot("J2", "middle", Optional.of("front-middle"), 2 * SPACING_MM),
            new JointSpot("J3", "middle", Optional.of("front-middle"), 3 * SPACING_MM));
    // 1200 + 20 to the place; the joint lies 150 mm before it; slack and loop of 70 mm at the
    // block.
    assertThat(lengths.finishedMm(strands.get(6))).isEqualTo(1220 - 150 + 70);
    assertThat(lengths.finishedMm(strands.get(7))).isEqualTo(150 + 70);
    assertThat(lengths.finishedMm(strands.get(8))).isEqualTo(150 + 1220 + 70);
  }

  @Test
  void aRunHoldsAsManyJointsAsItHasRoomFor() {
    // 1220 mm: from 50 to 1150 mm every 50 mm.
    for (int number = 1; number <= 25; number++) {
      joint(number);
    }
    List<JointSpot> spots = new Lengths(order, strands).joints();
    assertThat(spots).filteredOn(it -> it.run().equals(Optional.of("front-middle"))).hasSize(23);
    // The others find room on the run of a branch.
    assertThat(spots).filteredOn(it -> it.run().equals(Optional.of("middle-rear"))).hasSize(2);
  }

  @Test
  void aJointWithoutARunEndsAStub() {
    strand(new Touch.AtSlot("b", "f1", "middle"), joint("J1", "middle"));
    strand(joint("J1", "middle"), ground("g1", "middle"));
    strand(joint("J1", "middle"), ground("g2", "middle"));
    Lengths lengths = new Lengths(order, strands);
    assertThat(lengths.joints())
        .containsExactly(new JointSpot("J1", "middle", Optional.empty(), SPACING_MM));
    assertThat(lengths.finishedMm(strands.get(0))).isEqualTo(SPACING_MM + 70);
  }

  /** A lead that is cut off the joint on some build has to reach what it is spliced to there. */
  @Test
  void aJointThatLeadsAreCutOffEndsAStubAsLongAsTheyNeed() {
    joint(1);
    LeadDraft other =
        new LeadDraft(CircuitKind.SUPPLY, new Touch.AtCircuit("w", "middle"), ground("h1", "rear"));
    strands.get(2).use("A2", other, Set.of());
    assertThat(new Lengths(order, strands).joints())
        .containsExactly(new JointSpot("J1", "middle", Optional.empty(), 70));
  }
}
