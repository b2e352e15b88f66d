package org.loomwright.papers.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.loomwright.model.design.Plan;
import org.loomwright.model.kit.Kit;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.papers.calculation.DemoKits;
import org.loomwright.papers.page.OneFile;
import org.loomwright.planner.fit.FitCheck;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The file of the fit check as text; what it does in a browser is tested with the pages. */
class FitCheckPageTest {
  private static final Pattern DATA =
      Pattern.compile(
          "id=\"data\">(.*?)</script>.*var SUM = \\{length: (\\d+), sha: '([0-9a-f]{64})'\\}",
          Pattern.DOTALL);

  private final KitOrder order = DemoKits.planned("crew-comfort").order();
  private final Plan plan = DemoKits.planned("crew-comfort").plan();

  @Test
  void isOneSmallFileThatAsksForNothing() {
    String text = page(order, plan, 2);
    assertThat(text).hasSizeLessThan(300_000).isEqualTo(page(order, plan, 2)).doesNotContain("\r");
    assertThat(text).as("any mail and any old phone").matches("\\p{ASCII}+");
    assertThat(text).contains("default-src 'none'").doesNotContain("unsafe-inline");
    assertThat(text.replace("http://www.w3.org/2000/svg", ""))
        .doesNotContain("http:", "https:", "src=", "@import", "localStorage", "fetch(");
  }

  @Test
  void namesTheSumOfItsData() {
    Matcher found = DATA.matcher(page(order, plan, 2));
    assertThat(found.find()).isTrue();
    assertThat(found.group(2)).isEqualTo(String.valueOf(found.group(1).length()));
    assertThat(found.group(3)).isEqualTo(OneFile.sha256(found.group(1)));
    JsonNode data = JsonMapper.builder().build().readTree(found.group(1));
    assertThat(data.path("verifiedOn").intValue()).isEqualTo(2);
    assertThat(data.path("kit").path("name").stringValue()).isEqualTo(plan.kit().name());
  }

  @Test
  void namesCantEndTheElementTheyStandIn() {
    String name = "</script><script>alert(1)</script> \u00e4 \u20ac & \"";
    Kit kit = plan.kit();
    Kit hostile =
        new Kit(
            kit.id(),
            name,
            kit.revision(),
            kit.vehicle(),
            kit.rules(),
            kit.parts(),
            kit.mounts(),
            kit.wishes(),
            kit.designedAgainst());
    Plan named =
        new Plan(
            hostile,
            plan.builds(),
            plan.gap(),
            plan.fit(),
            plan.ways(),
            plan.cases(),
            plan.unserved(),
            plan.design(),
            plan.harness(),
            plan.checks(),
            plan.protections(),
            plan.networks(),
            plan.guide(),
            plan.proof(),
            plan.notes());
    String text = page(order, named, 0);
    assertThat(text).doesNotContain("alert(1)</script>").matches("\\p{ASCII}+");
    Matcher found = DATA.matcher(text);
    assertThat(found.find()).isTrue();
    assertThat(
            JsonMapper.builder()
                .build()
                .readTree(found.group(1))
                .path("kit")
                .path("name")
                .stringValue())
        .isEqualTo(name);
  }

  @Test
  void fewerThanNoVehicleIsRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> page(order, plan, -1))
        .withMessageContaining("-1");
  }

  private static String page(KitOrder order, Plan plan, int verifiedOn) {
    return FitCheckPage.text(order, plan, FitCheck.of(order, plan), verifiedOn);
  }
}
