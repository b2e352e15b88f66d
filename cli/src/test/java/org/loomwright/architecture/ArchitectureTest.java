package org.loomwright.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchRule;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The shipped classes of all modules keep the rules of the house. */
class ArchitectureTest {

  private static final JavaClasses SHIPPED =
      new ClassFileImporter()
          .withImportOption(new ImportOption.DoNotIncludeTests())
          .withImportOption(location -> !location.contains("/org/loomwright/reference/"))
          .importPackages("org.loomwright");

  static Stream<ArchRule> rules() {
    return Rules.all();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void shippedClassesKeep(ArchRule rule) {
    rule.check(SHIPPED);
  }

  /** Guards against rules that hold only because nothing was looked at. */
  @Test
  void everyModuleIsLookedAt() {
    for (String module :
        new String[] {
          "physics", "model", "store", "planner", "intake", "drawing", "papers", "web", "cli"
        }) {
      assertThat(SHIPPED.containPackage("org.loomwright." + module)).as(module).isTrue();
    }
  }
}
