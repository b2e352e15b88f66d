package org.loomwright.cli.plan.summary;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.cli.plan.PlanCommand;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.workspace.KitOrders;
import org.loomwright.model.workspace.NamedText;
import org.loomwright.model.workspace.Read;
import org.loomwright.model.workspace.WorkspaceReader;

class SummaryTest {
  private static final KitOrder ORDER = order();

  @Test
  void saysWhatAPractitionerWantsToKnow() {
    String text = Summary.of(ORDER, new HandMade(ORDER).plan(), true);
    assertThat(text)
        .startsWith("Rear-cabin heater and powered side steps for the panel van\n")
        .contains(
            "Kit crew-comfort, revision A, for the Ostveld Packer",
            "1 264 possible builds, 8 traits, 5 groups of builds told apart\n",
            "CAN BE RELEASED: every build is served",
            "missing on all 1 264 builds                           heater and blower supply\n",
            "already there on 564 of 1 264 builds, missing on 700  heater ground\n",
            "also needed: rear climate panel in the dash",
            "A1  heater feed: section B of the rear fuse block fed",
            "A2  section B of the rear fuse block dead",
            "62 %\n",
            "CC-1  every van  1 lead, 71.53 EUR, 100 %\n",
            "Leads: 2, of which 2 with a changeable end, 2 parked in some case\n",
            "HTR-1  rear fuse block slot F7 → floor connector cavity 1; 4 mm² red/white, 1400 mm,"
                + " fuse 20 A;\n         from end changeable in A2; to end parked in A2\n",
            "Checks: 1 hold, 0 marginal, 0 fail\n",
            "Proof: proven for 1 264 builds, 2 of 2 obligations shown\n",
            "How far the figures go: 1 note in the pack")
        .doesNotContain("Not served", "\u00A0", "\u202F");
  }

  @Test
  void namesEachMarginalAndFailingCheckWithFigureLimitMarginAndSource() {
    HandMade made = new HandMade(ORDER);
    made.dropsV = new double[] {0.1, 0.179, 0.21};
    assertThat(words(Summary.of(ORDER, made.plan(), true)))
        .contains(
            "NOT RELEASABLE: 1 check fails ",
            "Checks: 1 hold, 1 marginal, 1 fail FAILS voltage drop on the ground, lead L2: 0.21 V,"
                + " at most 0.18 V allowed, margin −17 %, worst in case A1 [service texts: ground"
                + " path below 0.2 V] marginal voltage drop on the ground, lead L1: 0.179 V, at"
                + " most 0.180 V allowed, margin +1 %");
  }

  @Test
  void namesUnservedBuildsAndTheSmallestCounterexample() {
    HandMade made = new HandMade(ORDER);
    made.served = false;
    made.proven = false;
    for (String text :
        List.of(Summary.of(ORDER, made.plan(), true), Summary.brief(ORDER, made.plan(), true))) {
      assertThat(words(text))
          .contains(
              "NOT RELEASABLE: 36 builds not served, the proof is not complete",
              "Not served - prepared for towing (36 builds): heater and blower supply: slot F7 is"
                  + " taken",
              "Proof: NOT PROVEN, 1 of 2 obligations shown - not shown: every need is met: fails on"
                  + " prepared for towing (36 builds): no feed for the heater");
    }
  }

  @Test
  void cutsLongListsAndSaysWhereTheRestIs() {
    HandMade made = new HandMade(ORDER);
    made.leads = 40;
    assertThat(Summary.of(ORDER, made.plan(), true))
        .contains("Leads: 40, ", "… and 31 more (see pack.pdf)\n", "HTR-9 ")
        .doesNotContain("HTR-10");
    assertThat(Summary.of(ORDER, made.plan(), false))
        .contains("… and 31 more (--out DIR writes them all)\n");
    made.leads = 10;
    assertThat(Summary.of(ORDER, made.plan(), true)).contains("HTR-10").doesNotContain("more");
  }

  @Test
  void keepsToItsWidth() {
    HandMade made = new HandMade(ORDER);
    made.leads = 30;
    made.served = false;
    made.proven = false;
    made.dropsV = new double[] {0.2, 0.3, 0.179};
    assertThat(Summary.of(ORDER, made.plan(), true).lines())
        .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(Screen.WIDTH));
  }

  @Test
  void wrapsAtBlanksAndBreaksOnlyWordsThatDoNotFit() {
    assertThat(Screen.wrap("one two three", 7)).containsExactly("one two", "three");
    assertThat(Screen.wrap("a rear-block/F9/metal-blade end", 12))
        .containsExactly("a", "rear-block/", "F9/metal-", "blade end");
    assertThat(Screen.wrap("abcdefghij", 4)).containsExactly("abcd", "efgh", "ij");
    assertThat(Screen.wrap("20\u00A0A of 20\u00A0A", 7))
        .containsExactly("20\u00A0A of", "20\u00A0A");
    assertThat(Screen.wrap("", 7)).containsExactly("");
  }

  /** The text as one line, so that it does not matter where it wraps. */
  private static String words(String text) {
    return text.replaceAll("\\s+", " ");
  }

  private static KitOrder order() {
    List<NamedText> texts = new ArrayList<>();
    for (String name :
        List.of(
            "crew-comfort.kit.json",
            "heater.equipment.json",
            "parts.parts.json",
            "rules.rules.json",
            "side-steps.equipment.json",
            "van.vehicle.json")) {
      try (InputStream stream = PlanCommand.class.getResourceAsStream("demo/" + name)) {
        assertThat(stream).as(name).isNotNull();
        texts.add(new NamedText(name, new String(stream.readAllBytes(), StandardCharsets.UTF_8)));
      } catch (IOException failure) {
        throw new IllegalStateException(failure);
      }
    }
    Read.Good good = (Read.Good) WorkspaceReader.read(texts);
    return ((KitOrders.Found) KitOrders.resolve(good.workspace(), "crew-comfort")).order();
  }
}
