package org.loomwright.architecture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.loomwright.model.planted.Fact;
import org.loomwright.model.planted.Painter;
import org.loomwright.model.planted.Talker;
import org.loomwright.physics.planted.KnowsTheModel;
import org.loomwright.planner.planted.Choice;
import org.loomwright.planner.proof.planted.StandsAlone;
import org.loomwright.planner.proof.planted.TrustsThePlanner;

/** Each rule is broken once on purpose: a rule that can't fail keeps nothing. */
class PlantedFaultsTest {

  @Test
  void physicsThatKnowsTheModelIsFound() {
    assertThatThrownBy(() -> checkLayers(KnowsTheModel.class, Fact.class))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("physics may use")
        .hasMessageContaining("KnowsTheModel");
  }

  @Test
  void aModelAloneKeepsTheLayers() {
    checkLayers(Fact.class);
    assertThat(Rules.LAYERS).hasSize(9);
  }

  @Test
  void aProofThatUsesThePlannerIsFound() {
    assertBreaks(Rules.PROOF_STANDS_ALONE, "TrustsThePlanner", TrustsThePlanner.class);
  }

  @Test
  void aProofThatUsesOnlyTheModelIsNotAccused() {
    Rules.PROOF_STANDS_ALONE.check(
        new ClassFileImporter().importClasses(StandsAlone.class, Fact.class));
  }

  @Test
  void aPackageCycleIsFound() {
    assertBreaks(Rules.NO_PACKAGE_CYCLES, "Choice", TrustsThePlanner.class, Choice.class);
  }

  @Test
  void printingAndLoggingOutsideTheCommandLineIsFound() {
    assertBreaks(Rules.ONLY_CLI_PRINTS, "Talker", Talker.class);
    assertBreaks(Rules.NO_JAVA_UTIL_LOGGING, "Talker", Talker.class);
  }

  @Test
  void paintingOutsideDrawingIsFound() {
    assertBreaks(Rules.ONLY_DRAWING_AND_PAPERS_PAINT, "Painter", Painter.class);
  }

  private static void checkLayers(Class<?>... classes) {
    var imported = new ClassFileImporter().importClasses(List.of(classes));
    Rules.LAYERS.forEach(rule -> rule.check(imported));
  }

  private static void assertBreaks(ArchRule rule, String culprit, Class<?>... classes) {
    var imported = new ClassFileImporter().importClasses(List.of(classes));
    assertThatThrownBy(() -> rule.check(imported))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining(culprit);
  }
}
