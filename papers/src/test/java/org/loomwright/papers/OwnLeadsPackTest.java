package org.loomwright.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.drawing.board.kit.HarnessBoard;
import org.loomwright.drawing.board.kit.LeadLengthCheck;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.Plan;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.workspace.KitOrders;
import org.loomwright.model.workspace.NamedText;
import org.loomwright.model.workspace.Read;
import org.loomwright.model.workspace.WorkspaceReader;
import org.loomwright.papers.words.CutLine;
import org.loomwright.papers.words.CutList;
import org.loomwright.papers.words.Names;
import org.loomwright.planner.plan.Planner;

/** Leads of the user's own in all papers of a kit. */
class OwnLeadsPackTest {
  private static final String OWN =
      """
      "ownLeads": [
        {"id": "camera", "name": "spare for a rear camera", "from": "loose left-seat-box",
         "to": "loose rear-bumper", "colour": "violet", "current": "1 A", "reason": "later"},
        {"id": "lamp", "name": "lamp on the trailer", "from": "pin trailer-socket socket 12",
         "to": "ground rear-ground", "size": "2.5 mm²", "current": "3 A", "reason": "later"}],
      "designedAgainst":""";

  @Test
  void theyAreCutDrawnAndListed(@TempDir Path folder) throws IOException {
    KitOrder order = order(OWN);
    Plan plan = Planner.plan(order);
    assertThat(plan.proof().counterexamples()).isEmpty();
    assertThat(plan.releasable()).isTrue();
    List<Lead> own = plan.design().leads().stream().filter(it -> it.own().isPresent()).toList();
    assertThat(own).hasSize(2);
    List<CutLine> lines = CutList.of(new Names(order, plan));
    for (Lead lead : own) {
      assertThat(lines).filteredOn(it -> it.lead().equals(lead)).hasSize(1);
    }
    CutLine camera =
        lines.stream().filter(it -> it.lead().equals(own.get(0))).findFirst().orElseThrow();
    assertThat(camera.a().name()).startsWith("cut blunt and cap with");
    assertThat(camera.a().stripMm()).isEmpty();
    assertThat(LeadLengthCheck.check(plan, HarnessBoard.of(plan, order))).isEmpty();
    PackWriter.write(order, plan, folder);
    assertThat(Files.readString(folder.resolve("leads.csv")))
        .contains(own.get(0).label() + ",", own.get(1).label() + ",");
    assertThat(Files.readString(folder.resolve("board-1.svg"))).contains("capped ends");
    assertThat(Files.readString(folder.resolve("result.json")))
        .contains("\"own\" : \"camera\"", "\"ownLeads\" : [");
  }

  @Test
  void kitsWithoutThemSayNothingOfThem() throws IOException {
    KitOrder order = order("");
    assertThat(PlanJson.text(Planner.plan(order))).doesNotContain("\"own\"", "ownLeads");
  }

  /** The trailer kit of the demo with something put before its last key. */
  private static KitOrder order(String more) throws IOException {
    List<NamedText> texts = new ArrayList<>();
    // Tests run in the folder of their module.
    try (Stream<Path> files = Files.list(Path.of("..", "demo"))) {
      for (Path file : files.filter(it -> it.toString().endsWith(".json")).sorted().toList()) {
        String name = file.getFileName().toString();
        String text = Files.readString(file);
        texts.add(
            new NamedText(
                name,
                name.equals("trailer.kit.json") && !more.isEmpty()
                    ? text.replace("\"designedAgainst\":", more)
                    : text));
      }
    }
    if (WorkspaceReader.read(texts) instanceof Read.Good good
        && KitOrders.resolve(good.workspace(), "trailer") instanceof KitOrders.Found found) {
      return found.order();
    }
    throw new IllegalStateException("the changed demo can't be read");
  }
}
