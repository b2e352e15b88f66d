package org.loomwright.physics.network;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

final class NetworkFindingsTest {
  private static Joint r(String name, String from, String to, double ohm) {
    return new Joint(name, from, to, Joint.Kind.RESISTOR, ohm, "made up");
  }

  private static Joint fuse(String name, String from, String to) {
    return Joint.fuse(name, from, to, 0.005, "made up");
  }

  private static List<Element> plain() {
    return List.of(
        new Source("battery", "body", "post", 12.5, 0.01),
        r("cable", "post", "bus", 0.001),
        fuse("F1", "bus", "lamp-in"),
        new ConstantCurrent("lamp", "lamp-in", "ground-1", 5),
        fuse("F2", "bus", "radio-in"),
        new ConstantCurrent("radio", "radio-in", "ground-2", 2),
        r("stud-1", "ground-1", "body", 0.004),
        r("stud-2", "ground-2", "body", 0.004));
  }

  private static Network plus(Element... more) {
    List<Element> all = new ArrayList<>(plain());
    all.addAll(List.of(more));
    return new Network("body", all);
  }

  @Test
  void aPlainNetworkHasNone() {
    Network n = plus();
    assertThat(NetworkFindings.ofWiring(n)).isEmpty();
    assertThat(NetworkFindings.ofState(NetworkAssert.solved(n), List.of())).isEmpty();
  }

  @Test
  void aJumperBetweenTwoFusedLinesMakesTwoFeeds() {
    assertThat(NetworkFindings.ofWiring(plus(r("jumper", "lamp-in", "radio-in", 0.01))))
        .containsExactly(
            new NetworkFinding.SeveralFeeds(List.of("lamp-in", "radio-in"), List.of("F1", "F2")));
  }

  @Test
  void aSecondSourceBehindAFuseFeedsBack() {
    Network n =
        plus(
            new Source("house", "body", "house-post", 13.2, 0.02),
            r("bridge", "house-post", "lamp-in", 0.01));
    assertThat(NetworkFindings.ofWiring(n))
        .containsExactly(
            new NetworkFinding.SeveralFeeds(
                List.of("lamp-in", "house-post"), List.of("F1", "house")),
            new NetworkFinding.JoinedSources(List.of("battery", "house")));
    Solved s = NetworkAssert.solved(n);
    List<NetworkFinding> found = NetworkFindings.ofState(s, List.of());
    assertThat(found)
        .containsExactly(
            new NetworkFinding.IntoSource("battery", -s.flow("battery").currentA()),
            new NetworkFinding.BackThroughFuse("F1", -s.flow("F1").currentA()));
    assertThat(found.get(1).message()).contains("backwards through fuse F1");
  }

  @Test
  void sourcesInSeriesAreNotJoined() {
    Network n =
        new Network(
            "body",
            List.of(
                new Source("lower", "body", "middle", 12, 0.01),
                new Source("upper", "middle", "top", 12, 0.01),
                new ConstantCurrent("winch", "top", "body", 50)));
    assertThat(NetworkFindings.ofWiring(n)).isEmpty();
    NetworkAssert.voltage(NetworkAssert.solved(n), "top", 23);
  }

  @Test
  void aSensorGroundOnALoadedStudIsLifted() {
    Solved s = NetworkAssert.solved(plus(r("sensor-ground", "sensor", "ground-1", 0.01)));
    List<NetworkFinding> found =
        NetworkFindings.ofState(
            s,
            List.of(
                new NetworkFindings.SensorGround("sensor", "body", 0.01),
                new NetworkFindings.SensorGround("sensor", "body", 0.03),
                new NetworkFindings.SensorGround("sensor", "ground-1", 0.001)));
    assertThat(found).hasSize(1);
    assertThat(found.get(0).message())
        .isEqualTo("sensor ground sensor lies 0.0200 V from body, more than 0.0100 V");
  }
}
