package org.loomwright.model.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomwright.model.json.DocumentWriter;
import org.loomwright.model.kit.Kit;
import org.loomwright.model.kit.OwnEnd;

/** Leads of the user's own: what is taken, and each refusal with what to do instead. */
class OwnLeadChecksTest {
  private static final String VAN = "alder-van.json";
  private static final String KIT = "fan-kit.json";
  private static final String PARTS = "parts/bench-parts.json";
  private static final String CAMERA = lead("camera", "loose floor", "loose rear", "");

  private static String lead(String id, String from, String to, String more) {
    return "{\"id\": \""
        + id
        + "\", \"name\": \"spare\", \"from\": \""
        + from
        + "\", \"to\": \""
        + to
        + "\", \"current\": \"1 A\", \"reason\": \"for later\""
        + more
        + "}";
  }

  private static Small with(String... leads) {
    return with(Small.workspace(), leads);
  }

  private static Small with(Small small, String... leads) {
    return small.with(
        KIT, "\"wishes\": [", "\"ownLeads\": [" + String.join(", ", leads) + "], \"wishes\": [");
  }

  @Test
  void everyFormIsTakenAndWrittenAsRead() {
    Read read =
        with(
                CAMERA,
                lead("pin", "pin cabin-fan main 4", "loose floor", ", \"when\": \"seats = bench\""),
                lead(
                    "stud",
                    "ground rear-stud",
                    "loose floor",
                    ", \"size\": \"1.5 mm²\", \"colour\":" + " \"red\""))
            .read();
    Kit kit = Small.good(read).workspace().kits().get(0);
    assertThat(kit.ownLeads()).hasSize(3);
    assertThat(kit.ownLeads().get(1).from()).isEqualTo(new OwnEnd.OfPin("cabin-fan", "main", "4"));
    String written = DocumentWriter.write(kit);
    assertThat(written).contains("\"from\": \"pin cabin-fan main 4\"");
    NamedText again = new NamedText(KIT, written);
    assertThat(
            Small.good(Small.workspace().without(KIT).plus(KIT, again.text()).read())
                .workspace()
                .kits()
                .get(0))
        .isEqualTo(kit);
  }

  @Test
  void aCavityByItsConnectorIsTaken() {
    assertThat(with(lead("c", "cavity rear-connector 4", "loose floor", "")).problems()).isEmpty();
  }

  static Stream<Arguments> refusals() {
    return Stream.of(
        Arguments.of(
            lead("x", "slot rear-block F7", "loose rear", ""),
            "ownLeads[0].from",
            "would make the lead live without a need and its fuse; write the need into the"
                + " equipment's document"),
        Arguments.of(
            lead("x", "loose rear", "circuit tow-feed", ""),
            "ownLeads[0].to",
            "would tie the lead to a wire of the vehicle without a need"),
        Arguments.of(
            lead("x", "loose rear", "unit rear-lamp", ""),
            "ownLeads[0].to",
            "is inside a unit that nobody works on"),
        Arguments.of(
            lead("x", "loose rear", "somewhere", ""),
            "ownLeads[0].to",
            "write 'cavity CONNECTOR NUMBER', 'pin EQUIPMENT PLUG NUMBER', 'ground STUD' or 'loose"
                + " PLACE'"),
        Arguments.of(
            lead("x", "pin cabin-fan main 1", "loose floor", ""),
            "ownLeads[0].from",
            "a need of 'cabin-fan': the planner finds the lead for it, with its fuse; take a cavity"
                + " that no need uses"),
        Arguments.of(
            lead("x", "cavity rear-connector 2", "loose floor", ""),
            "ownLeads[0].from",
            "take a cavity that no need uses"),
        Arguments.of(
            lead("x", "cavity rear-connector 9", "loose floor", ""),
            "ownLeads[0].from",
            "has no cavity '9'; its cavities are 1, 2, 3, 4"),
        Arguments.of(
            lead("x", "cavity rear-conector 4", "loose floor", ""),
            "ownLeads[0].from",
            "there is no connector 'rear-conector'; did you mean 'rear-connector'?"),
        Arguments.of(
            lead("x", "pin cabin-fan side 4", "loose floor", ""),
            "ownLeads[0].from",
            "the kit has no mount of plug 'side' of 'cabin-fan'; its mounts are cabin-fan main"),
        Arguments.of(
            lead("x", "ground front-stud", "loose floor", ""),
            "ownLeads[0].from",
            "there is no ground stud 'front-stud'"),
        Arguments.of(
            lead("x", "loose flor", "loose rear", ""),
            "ownLeads[0].from",
            "there is no place 'flor'; did you mean 'floor'?"),
        Arguments.of(
            lead("x", "loose rear", "loose rear", ""),
            "ownLeads[0].to",
            "the lead ends where it begins"),
        Arguments.of(
            lead("x", "pin cabin-fan main 4", "cavity rear-connector 4", ""),
            "ownLeads[0].to",
            "the lead ends where it begins"),
        Arguments.of(
            lead("x", "ground rear-stud", "ground rear-stud", ""),
            "ownLeads[0].to",
            "the lead ends where it begins"),
        Arguments.of(
            lead("x", "loose floor", "loose rear", ", \"when\": \"tow-prep = yes\""),
            "ownLeads[0].when",
            "laid and taped back alike on every build; leave 'when' out"),
        Arguments.of(
            lead("x", "loose floor", "ground rear-stud", ", \"when\": \"tow-prep = maybe\""),
            "ownLeads[0].when",
            "trait 'tow-prep' has no value 'maybe'"),
        Arguments.of(
            lead("x", "loose floor", "ground rear-stud", ", \"when\": \"unknown\""),
            "ownLeads[0].when",
            "can't be unknown: it is your choice"),
        Arguments.of(
            lead("x", "loose floor", "ground rear-stud", ", \"when\": \"never\""),
            "ownLeads[0].when",
            "the lead would be used on no build"),
        Arguments.of(
            lead("x", "loose floor", "loose rear", ", \"size\": \"2.5 mm²\""),
            "ownLeads[0].size",
            "no wire of this size is on the kit's parts lists; they have 1.5 mm²"),
        Arguments.of(
            lead("x", "loose floor", "loose rear", ", \"colour\": \"blue\""),
            "ownLeads[0].colour",
            "can be bought in this colour; there is red, black, red/yellow"),
        Arguments.of(
            CAMERA.replace("1 A", "0 A"), "ownLeads[0].current", "it must be more than zero"));
  }

  @ParameterizedTest
  @MethodSource("refusals")
  void refusesWithTheWayOut(String lead, String path, String words) {
    assertThat(with(lead).problems())
        .singleElement()
        .asString()
        .startsWith(KIT + ", " + path + ": ")
        .contains(words);
  }

  @Test
  void idsAndCavitiesAreUsedOnce() {
    assertThat(with(CAMERA, CAMERA).problems())
        .singleElement()
        .asString()
        .contains("'camera' is already used by ownLeads[0]");
    assertThat(
            with(
                    lead("a", "pin cabin-fan main 4", "loose floor", ""),
                    lead("b", "loose floor", "cavity rear-connector 4", ""))
                .problems())
        .containsExactly(
            KIT
                + ", ownLeads[1].to: 'a' ends in this cavity already, and a cavity takes one wire;"
                + " take another");
  }

  @Test
  void whatTheVehicleForbidsIsRefused() {
    String stud = lead("x", "ground rear-stud", "loose floor", "");
    assertThat(with(Small.workspace().with(VAN, "\"lugs\": 1,", "\"lugs\": 4,"), stud).problems())
        .containsExactly(
            KIT
                + ", ownLeads[0].from: ground stud 'rear-stud' carries 4 lugs, all it may; take"
                + " another");
    assertThat(
            with(
                    Small.workspace().with(VAN, "\"lugs\": 1,", "\"sensor\": true, \"lugs\": 1,"),
                    stud)
                .problems())
        .contains(
            KIT
                + ", ownLeads[0].from: ground stud 'rear-stud' serves sensors; a load there shifts"
                + " their signals; take another");
    String cavity = lead("x", "cavity rear-connector 4", "loose floor", "");
    assertThat(
            with(
                    Small.workspace()
                        .with(VAN, "\"presentWhen\": \"seats != none\",", "\"restraint\": true,"),
                    cavity)
                .problems())
        .anyMatch(
            it ->
                it.contains("ownLeads[0].from: connector 'rear-connector' belongs to airbags")
                    && it.contains("choose another"));
    assertThat(
            with(
                    Small.workspace()
                        .with(VAN, "\"seats = single\"", "\"always\"")
                        .with(VAN, "[\"cavity rear-connector 2\",", "[\"cavity rear-connector 4\",")
                        .with(
                            VAN,
                            "\"presentWhen\": \"seats in (bench, single)\"",
                            "\"presentWhen\": \"always\""),
                    cavity)
                .problems())
        .containsExactly(
            KIT
                + ", ownLeads[0].from: cavity '4' of 'rear-connector' holds the wire 'rear-ground' on"
                + " every build; take an empty cavity. To connect equipment to that wire, write the"
                + " need into the equipment's document");
  }

  @Test
  void blockedCavitiesAndLonelyPlacesAreRefused() {
    assertThat(
            with(
                    Small.workspace()
                        .with(VAN, "\"pluggedWhen\": \"unknown\",", "\"blockedWhen\": \"always\","),
                    lead("x", "cavity rear-connector 4", "loose floor", ""))
                .problems())
        .anyMatch(it -> it.contains("ownLeads[0].from: cavity '4' of 'rear-connector' is blocked"));
    assertThat(
            with(
                    Small.workspace()
                        .with(
                            VAN,
                            "\"places\": [",
                            "\"places\": [{\"id\": \"roof\", \"name\": \"the roof\", \"ambient\":"
                                + " \"80 °C\"},"),
                    lead("x", "loose floor", "loose roof", ""))
                .problems())
        .containsExactly(
            KIT
                + ", ownLeads[0].to: no usable run leads from 'floor' to 'roof'; add the run to the"
                + " vehicle, or take another end");
  }

  @Test
  void studsBearNoMoreThanTheyMay() {
    String much = lead("x", "ground rear-stud", "loose floor", "").replace("1 A", "20 A");
    assertThat(with(much, much.replace("\"x\"", "\"y\"")).problems())
        .containsExactly(
            KIT
                + ", ownLeads[1].from: ground stud 'rear-stud' may carry 34 A more than it does, and"
                + " leads of your own would bring 40 A; take another");
    String little = lead("a", "ground rear-stud", "loose floor", "");
    assertThat(
            with(
                    Small.workspace().with(VAN, "\"lugs\": 1,", "\"lugs\": 3,"),
                    little,
                    little.replace("\"a\"", "\"b\""))
                .problems())
        .containsExactly(
            KIT
                + ", ownLeads[1].from: ground stud 'rear-stud' has lug positions left: 1, and"
                + " leads of your own would take 2; take another");
  }

  @Test
  void looseEndsNeedACapOnFile() {
    assertThat(with(Small.workspace().with(PARTS, "\"end-cap\"", "\"tie\""), CAMERA).problems())
        .containsExactly(
            KIT
                + ", ownLeads[0]: an end of this lead is taped back under an end cap, and the kit's"
                + " parts lists have none; add a sundry part whose use is 'end-cap'");
  }
}
