package org.loomwright.architecture;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideOutsideOfPackages;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.library.GeneralCodingRules;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/** The rules, apart from the classes they are applied to, so that planted faults can be tried. */
final class Rules {

  private static final String ROOT = "org.loomwright.";

  /** Modules from the bottom up, each with the modules it may use. */
  static final List<ArchRule> LAYERS =
      List.of(
          layer("physics"),
          layer("model"),
          layer("store", "model"),
          layer("planner", "physics", "model"),
          layer("intake", "model"),
          layer("drawing", "physics", "model", "planner"),
          layer("papers", "physics", "model", "planner", "drawing"),
          layer("web", "physics", "model", "store", "planner", "intake", "drawing", "papers"),
          layer(
              "cli", "physics", "model", "store", "planner", "intake", "drawing", "papers", "web"));

  /** A proof that used the planner's own code would repeat the planner's own mistakes. */
  static final ArchRule PROOF_STANDS_ALONE =
      classes()
          .that()
          .resideInAPackage("org.loomwright.planner.proof..")
          .should()
          .onlyDependOnClassesThat()
          .resideInAnyPackage(
              "org.loomwright.planner.proof..",
              "org.loomwright.model..",
              "org.loomwright.physics..",
              "java..",
              "org.logicng..",
              "org.jspecify..")
          .allowEmptyShould(true);

  static final ArchRule NO_PACKAGE_CYCLES =
      SlicesRuleDefinition.slices()
          .assignedFrom(
              new SliceAssignment() {
                @Override
                public SliceIdentifier getIdentifierOf(JavaClass javaClass) {
                  return SliceIdentifier.of(javaClass.getPackageName());
                }

                @Override
                public String getDescription() {
                  return "packages";
                }
              })
          .should()
          .beFreeOfCycles();

  static final ArchRule ONLY_CLI_PRINTS =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.loomwright.cli..")
          .should(GeneralCodingRules.ACCESS_STANDARD_STREAMS);

  static final ArchRule NO_JAVA_UTIL_LOGGING =
      noClasses()
          .that()
          .resideOutsideOfPackage("org.loomwright.cli..")
          .should(GeneralCodingRules.USE_JAVA_UTIL_LOGGING);

  static final ArchRule ONLY_DRAWING_AND_PAPERS_PAINT =
      noClasses()
          .that()
          .resideOutsideOfPackages(
              "org.loomwright.drawing..",
              "org.loomwright.papers..",
              // Paints nothing, but the platform decodes pictures into its classes for painting.
              "org.loomwright.store.picture..")
          .should()
          .dependOnClassesThat()
          .resideInAnyPackage("java.awt..", "javax.swing..");

  private Rules() {}

  static Stream<ArchRule> all() {
    return Stream.concat(
        LAYERS.stream(),
        Stream.of(
            PROOF_STANDS_ALONE,
            NO_PACKAGE_CYCLES,
            ONLY_CLI_PRINTS,
            NO_JAVA_UTIL_LOGGING,
            ONLY_DRAWING_AND_PAPERS_PAINT));
  }

  private static ArchRule layer(String module, String... usable) {
    String[] known =
        Stream.concat(Stream.of(module), Arrays.stream(usable))
            .map(name -> ROOT + name + "..")
            .toArray(String[]::new);
    return noClasses()
        .that()
        .resideInAPackage(ROOT + module + "..")
        .should()
        .dependOnClassesThat(
            resideInAPackage("org.loomwright..").and(resideOutsideOfPackages(known)))
        .as(module + " may use of Loomwright only itself and " + List.of(usable))
        // Some modules come later; their rule waits for them.
        .allowEmptyShould(true);
  }
}
