package org.loomwright.papers.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.design.Answer;
import org.loomwright.model.design.Ask;
import org.loomwright.model.design.Edge;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.StepKind;
import org.loomwright.model.vehicle.TellHow;
import org.loomwright.model.vehicle.Undo;

class ForksTest {
  private static final Ask ASK =
      new Ask(
          "colour",
          TellHow.LOOK,
          List.of(
              new Answer("red", "red", "red seen", Optional.empty()),
              new Answer("blue", "blue", "blue seen", Optional.empty())));

  @Test
  void saysNothingWhereTheNextNumberFollows() {
    Forks forks = forks(always("a", "b"), always("b", "c"));

    assertThat(forks.onward(step(forks, "a"))).isEmpty();
    assertThat(forks.reachedFrom(step(forks, "b"))).isEmpty();
    assertThat(forks.reachedFrom(step(forks, "a"))).isEmpty();
    assertThat(forks.isEnd(step(forks, "c"))).isTrue();
  }

  @Test
  void saysWhereToJumpAndWhereOneCameFrom() {
    Forks forks = forks(always("a", "c"), always("b", "c"));

    assertThat(forks.onward(step(forks, "a"))).containsExactly("Go to step 3.");
    assertThat(forks.reachedFrom(step(forks, "c"))).contains("Reached from steps 1 and 2.");
  }

  @Test
  void givesEachAnswerItsStepWhenTheAnswerAloneDecides() {
    Forks forks =
        forks(
            new Edge("a", "b", Condition.is("colour", "red"), "red"),
            new Edge("a", "c", Condition.is("colour", "red").negate(), "not red"));

    assertThat(forks.byAnswer(step(forks, "a"), ASK))
        .containsEntry("red", 2)
        .containsEntry("blue", 3);
  }

  @Test
  void leavesItToTheConditionsWhenEarlierAnswersCountToo() {
    Condition both = Condition.is("colour", "red").and(Condition.is("size", "big"));
    Forks forks =
        forks(new Edge("a", "b", both, "red and big"), new Edge("a", "c", both.negate(), "else"));

    assertThat(forks.byAnswer(step(forks, "a"), ASK)).isEmpty();
    assertThat(forks.onward(step(forks, "a")))
        .containsExactly("Red and big: go to step 2.", "Else: go to step 3.");
  }

  private static Edge always(String from, String to) {
    return new Edge(from, to, Condition.always(), "");
  }

  private static Step step(Forks forks, String id) {
    return forks.guide().step(id).orElseThrow();
  }

  private static Forks forks(Edge... edges) {
    List<Step> steps = new ArrayList<>();
    for (String id : List.of("a", "b", "c")) {
      steps.add(
          new Step(
              id,
              steps.size() + 1,
              StepKind.ACT,
              "here",
              id,
              "",
              "",
              List.of(),
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              Undo.EASILY,
              List.of(),
              List.of(),
              Optional.empty(),
              List.of(),
              0));
    }
    return new Forks(new Guide("a", steps, List.of(edges), List.of("c"), List.of(), 0, 0));
  }
}
