package org.loomwright.planner.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.loomwright.model.equipment.Need;
import org.loomwright.model.equipment.Pin;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.parts.Fuse;
import org.loomwright.model.parts.Terminal;
import org.loomwright.reference.ReferenceTable.Row;
import org.loomwright.reference.ReferenceTables;

/** The demo's documents follow the published lists that they name as their source. */
class DemoReferenceTest {
  /** ISO 11446: each contact's conductor is at least the recommended one. */
  @Test
  void theTrailerSocketHasTheContactsAndConductorsOfTheStandard() {
    List<Pin> pins =
        Demo.order(Demo.TRAILER).equipment().stream()
            .filter(it -> it.id().equals("trailer-socket"))
            .flatMap(it -> it.plugs().stream())
            .flatMap(plug -> plug.pins().stream())
            .toList();
    List<Row> rows = ReferenceTables.trailerSocket().rows();
    assertThat(pins).extracting(Pin::cavity).isEqualTo(column(rows, "contact"));
    for (int i = 0; i < rows.size(); i++) {
      Row row = rows.get(i);
      if (row.blank("recommended_mm2")) {
        assertThat(pins.get(i).need()).as(row.where()).isEmpty();
      } else {
        Need need = pins.get(i).need().orElseThrow();
        assertThat(need.leastArea().orElseThrow().areaMm2())
            .as(row.where())
            .isGreaterThanOrEqualTo(row.number("recommended_mm2"));
      }
    }
  }

  /** Every feed that looks like a number of DIN 72552 is one. */
  @Test
  void feedsAreDesignationsOfTheStandardOrNames() {
    Set<String> designations =
        Set.copyOf(column(ReferenceTables.terminalDesignations().rows(), "terminal"));
    Set<String> used = new TreeSet<>();
    for (String kit : List.of(Demo.COMFORT, Demo.TRAILER)) {
      KitOrder order = Demo.order(kit);
      Stream.concat(
              order.vehicle().circuits().stream().flatMap(it -> it.feed().stream()),
              order.vehicle().fuseBlocks().stream()
                  .flatMap(block -> block.sections().stream())
                  .map(section -> section.feed()))
          .forEach(used::add);
      order.equipment().stream()
          .flatMap(it -> it.plugs().stream())
          .flatMap(plug -> plug.pins().stream())
          .flatMap(pin -> pin.need().stream())
          .flatMap(need -> need.feed().stream())
          .forEach(used::add);
    }
    Set<String> numbers =
        used.stream().filter(it -> it.matches("[A-Z]|[0-9]+[a-zA-Z]?")).collect(Collectors.toSet());
    assertThat(numbers).contains("15", "30", "31").isSubsetOf(designations);
  }

  /** Blade fuses have the body colour of their rating. */
  @Test
  void fusesHaveTheColourOfTheirRating() {
    List<Row> rows = ReferenceTables.bladeFuseColours().rows();
    List<Fuse> fuses = Demo.order(Demo.COMFORT).parts().fuses();
    assertThat(fuses).isNotEmpty();
    for (Fuse fuse : fuses) {
      String published =
          rows.stream()
              .filter(row -> row.text("family").startsWith("regular"))
              .filter(row -> row.number("rating_A") == fuse.rating().amperes())
              .map(row -> row.text("colour"))
              .findFirst()
              .orElseThrow();
      assertThat(published).as(fuse.id()).contains(fuse.colour());
    }
  }

  /** Nobody who writes a manual asks for a longer wait than the demo's vehicle. */
  @Test
  void theWaitBeforeRestraintWorkIsTheLongestPublished() {
    double longest =
        ReferenceTables.restraintWaits().rows().stream()
            .mapToDouble(row -> row.number("wait_s"))
            .max()
            .orElseThrow();
    assertThat(Demo.order(Demo.COMFORT).vehicle().restraintWait().orElseThrow().seconds())
        .isGreaterThanOrEqualTo(longest);
  }

  /** Tab terminals of the demo take no wire that a usual tab of that width does not take. */
  @Test
  void tabTerminalsTakeUsualWires() {
    int compared = 0;
    for (Terminal terminal : Demo.order(Demo.COMFORT).parts().terminals()) {
      for (String tab : List.of("2.8", "6.3")) {
        if (!terminal.name().contains(tab + " mm terminal")) {
          continue;
        }
        compared++;
        assertThat(ReferenceTables.tabTerminals().rows())
            .as(terminal.id())
            .anyMatch(
                row ->
                    row.text("tab_mm").equals(tab)
                        && row.number("least_mm2") <= terminal.wireLeast().areaMm2()
                        && row.number("most_mm2") >= terminal.wireMost().areaMm2());
      }
    }
    assertThat(compared).isGreaterThanOrEqualTo(4);
  }

  /** The shop's budget for a feed of its own is the critical one, for a shared feed the other. */
  @Test
  void dropBudgetsKeepWithinThePublishedOnes() {
    KitOrder order = Demo.order(Demo.COMFORT);
    for (Row row : ReferenceTables.workmanship().rows()) {
      double ours =
          switch (row.text("rule")) {
            case "voltage drop of critical circuits" -> order.rules().feedDrop().value().fraction();
            case "voltage drop of other circuits" ->
                order.rules().splicedFeedDrop().value().fraction();
            default -> throw new AssertionError(row.where());
          };
      assertThat(100 * ours).as(row.where()).isLessThanOrEqualTo(row.number("value") + 1e-9);
    }
  }

  private static List<String> column(List<Row> rows, String name) {
    return rows.stream().map(row -> row.text(name)).toList();
  }
}
