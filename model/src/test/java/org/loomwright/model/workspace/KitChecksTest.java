package org.loomwright.model.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Checks that span several items or documents. */
class KitChecksTest {
  private static final String VAN = "alder-van.json";
  private static final String KIT = "fan-kit.json";
  private static final String PARTS = "parts/bench-parts.json";

  @Test
  void anUnreachableMountIsFound() {
    assertThat(
            Small.workspace()
                .with(
                    VAN,
                    "\"places\": [",
                    "\"places\": [{\"id\": \"roof\", \"name\": \"the roof\", \"ambient\": \"80 °C\"},")
                .with(KIT, "\"connector\": \"rear-connector\"", "\"place\": \"roof\"")
                .problems())
        .containsExactly(
            "fan-kit.json, mounts[0].place: no usable run leads to 'roof' from a fuse block, a ground"
                + " stud or a circuit; add the run to the vehicle");
  }

  @Test
  void restraintConnectorsAreRefused() {
    assertThat(
            Small.workspace()
                .with(VAN, "\"presentWhen\": \"seats != none\",", "\"restraint\": true,")
                .problems())
        .containsExactly(
            "fan-kit.json, mounts[0].connector: connector 'rear-connector' belongs to airbags or"
                + " pretensioners and is never touched; choose another");
  }

  @Test
  void plugAndConnectorMustMate() {
    String second =
        "\"housings\": [{\"id\": \"HS-1\", \"name\": \"1-way\", \"width\": \"9 mm\", \"height\": \"9"
            + " mm\", \"latch\": true, \"price\": \"1 EUR\", \"source\": \"a data sheet\","
            + " \"cavities\": [{\"number\": \"1\", \"x\": \"4 mm\", \"y\": \"4 mm\", \"width\": \"4"
            + " mm\", \"height\": \"4 mm\", \"terminals\": [\"TM-28\"]}]},";
    assertThat(
            Small.workspace()
                .with(PARTS, "\"housings\": [", second)
                .with("cabin-fan.json", "\"matesWith\": \"HS-4\"", "\"matesWith\": \"HS-1\"")
                .problems())
        .containsExactly(
            "cabin-fan.json, plugs[0].pins[1].cavity: housing 'HS-1' has no cavity '2'; its cavities"
                + " are 1",
            "cabin-fan.json, plugs[0].pins[2].cavity: housing 'HS-1' has no cavity '3'; its cavities"
                + " are 1",
            "cabin-fan.json, plugs[0].pins[3].cavity: housing 'HS-1' has no cavity '4'; its cavities"
                + " are 1",
            "fan-kit.json, mounts[0].connector: plug 'main' mates with housing 'HS-1', but connector"
                + " 'rear-connector' has housing 'HS-4'");
  }

  @Test
  void partsOfAnotherListAreNotAtHand() {
    String other =
        "{\"kind\": \"parts\", \"format\": 1, \"id\": \"other\", \"name\": \"other\", \"revision\":"
            + " \"1\"}";
    assertThat(
            Small.workspace()
                .plus("other.json", other)
                .with(KIT, "\"parts\": [\"bench-parts\"]", "\"parts\": [\"other\"]")
                .problems())
        .containsExactly(
            "fan-kit.json, parts: connector rear-connector needs housing 'HS-4', which is on another"
                + " list than other; add that list",
            "fan-kit.json, parts: slot F7 of rear-block needs terminal 'TM-63', which is on another"
                + " list than other; add that list",
            "fan-kit.json, parts: slot F9 of rear-block needs terminal 'TM-63', which is on another"
                + " list than other; add that list",
            "fan-kit.json, parts: plug main needs housing 'HS-4', which is on another list than"
                + " other; add that list");
  }

  @Test
  void twoMountsOfOnePlugAreRefused() {
    assertThat(
            Small.workspace()
                .with(
                    KIT,
                    "\"mounts\": [",
                    "\"mounts\": [{\"equipment\": \"cabin-fan\", \"plug\": \"main\", \"place\":"
                        + " \"floor\"},")
                .problems())
        .containsExactly(
            "fan-kit.json, mounts[1].plug: 'cabin-fan main' is already used by mounts[0]; each needs"
                + " its own");
  }

  @Test
  void theSameRunTwiceIsFound() {
    String twin =
        "\"runs\": [{\"id\": \"twin\", \"from\": \"rear\", \"to\": \"floor\", \"length\": \"2 m\","
            + " \"tolerance\": \"1 cm\", \"follows\": \"the factory loom on the left sill\","
            + " \"passes\": [\"the grommet behind the step well\"]},";
    assertThat(Small.workspace().with(VAN, "\"runs\": [", twin).problems())
        .containsExactly(
            "alder-van.json, runs[1]: the run 'sill' is the same as runs[0]; keep one of them");
  }

  @Test
  void openingsInACircleAreToldOnce() {
    assertThat(
            Small.workspace()
                .with(VAN, "\"tools\": [\"trim wedge\"]", "\"behind\": [\"step-cover\"]")
                .problems())
        .containsExactly(
            "alder-van.json, openings[1].behind: the openings go in a circle, so none can be opened"
                + " first: sill-trim is behind step-cover, which is behind sill-trim");
  }

  @Test
  void whatAnUnreadableFileMayHoldIsNotCalledMissing() {
    assertThat(
            Small.workspace()
                .with(PARTS, "\"kind\": \"parts\",", "")
                .with(KIT, "\"plug\": \"main\"", "\"plug\": \"mian\"")
                .problems())
        .containsExactly(
            "fan-kit.json, mounts[0].plug: there is no plug 'mian'; did you mean 'main'?",
            "parts/bench-parts.json, kind: the document does not say its kind; write \"kind\" with"
                + " one of vehicle, equipment, kit, parts, rules, finding, job, batch");
  }

  @Test
  void aRefusedItemIsStillKnownToOthers() {
    // The connector itself is refused; the circuit, the kit and the run that name it are not.
    assertThat(
            Small.workspace()
                .with(VAN, "\"latch\": \"down\"", "\"latch\": \"below\"")
                .with(
                    VAN,
                    "\"id\": \"yes\", \"words\": \"prepared for towing\"",
                    "\"id\": \"yes\", \"words\": 7")
                .problems())
        .containsExactly(
            "alder-van.json, traits[0].values[0].words: a number stands here, but it must be text in"
                + " quotation marks",
            "alder-van.json, connectors[0].view.latch: 'below' is not known here; the words are up,"
                + " right, down, left");
  }
}
