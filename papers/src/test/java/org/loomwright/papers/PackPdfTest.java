package org.loomwright.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.Check;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Step;
import org.loomwright.papers.section.Pack;
import org.loomwright.papers.section.Section;
import org.loomwright.papers.words.Forks;

/** Reads the printed pack back with a reader of its own and compares it with the plan. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PackPdfTest {
  private final Plan plan = SamplePlan.troubled();
  private final List<String> pages = new ArrayList<>();
  private final List<PDFont> fonts = new ArrayList<>();
  private String all = "";

  /** Words in the order in which they were set, so that the lines of a cell stay together. */
  private String cells = "";

  @BeforeAll
  void read(@TempDir Path folder) throws IOException {
    Path pdf = PackWriter.write(SamplePlan.order(), plan, folder).get(0);
    try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setSortByPosition(true);
      for (int page = 1; page <= document.getNumberOfPages(); page++) {
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        pages.add(plain(stripper.getText(document)));
      }
      cells = flat(plain(new PDFTextStripper().getText(document)));
      for (PDPage page : document.getPages()) {
        for (COSName name : page.getResources().getFontNames()) {
          fonts.add(page.getResources().getFont(name));
        }
      }
    }
    all = String.join("\n", pages);
  }

  @Test
  void namesKitRevisionAndPageOnEveryPage() {
    assertThat(pages).hasSizeGreaterThan(10);
    for (int i = 0; i < pages.size(); i++) {
      assertThat(pages.get(i))
          .contains("kit heat-07 · revision C")
          .contains("page " + (i + 1) + " of " + pages.size())
          .contains("Osprey 3 panel van, vehicle revision 7");
    }
  }

  @Test
  void holdsItsFonts() {
    assertThat(fonts).isNotEmpty();
    assertThat(fonts).allMatch(PDFont::isEmbedded);
    assertThat(fonts).extracting(PDFont::getName).allMatch(it -> it.contains("DejaVu"));
  }

  @Test
  void startsEverySectionInOrderAndAtTheTopOfAPage() {
    int page = 1;
    for (Section section : Pack.sections()) {
      while (page < pages.size() && !starts(section, pages.get(page))) {
        page++;
      }
      assertThat(page).as(section.title()).isLessThan(pages.size());
    }
  }

  /** In the page's head and right below it; a section that flows on has a line of its own. */
  private static boolean starts(Section section, String page) {
    List<String> lines = page.lines().map(String::strip).toList();
    if (section.layout() == Section.Layout.FLOW) {
      return lines.contains(section.title());
    }
    String top = String.join(" ", lines.subList(0, 4));
    return top.indexOf(section.title()) != top.lastIndexOf(section.title());
  }

  @Test
  void holdsLeadsCasesChecksAndSteps() {
    for (Lead lead : plan.design().leads()) {
      assertThat(all).contains(lead.label()).contains(lead.colour().code());
    }
    for (Case it : plan.cases()) {
      assertThat(all).contains(it.id()).contains(it.words());
    }
    for (Check check : plan.checks()) {
      assertThat(all).contains(check.name()).contains(check.subject());
    }
    Forks forks = new Forks(plan.guide());
    for (Step step : plan.guide().steps()) {
      assertThat(cells)
          .contains(flat(step.number() + forks.reachedFrom(step).orElse("") + step.title()));
    }
  }

  @Test
  void saysWhyAKitCanNotBeReleased() {
    assertThat(pages.get(0))
        .contains("NOT RELEASABLE")
        .contains("Not served: vehicles with both slots taken (12 builds). No slot with room")
        .contains("voltage drop on the feed, lead H1: 0.3604 V, at most 0.3600 V allowed")
        .contains("Not proven: no act that can't be undone precedes its question (step 7).")
        .contains("2 of 3 obligations shown over 1 152 builds")
        .contains("conductor temperature, lead H1: 118 °C");
    assertThat(all).contains("Counterexample: the terminal goes in before");
  }

  @Test
  void sendsToTheCautionsFromTheFrontPage() {
    assertThat(pages.get(0))
        .contains("For trained people. Read the cautions before the first step.");
  }

  @Test
  void leadsOnAtForksAndIsSilentElsewhere() {
    assertThat(all)
        .contains("prepared for towing a coupling or a code on the order go on with step 4")
        .contains("not prepared for towing no coupling, no code go to step 5")
        .contains("If prepared for towing, rear section fed go to step 9")
        .contains("Go to step 11.")
        .contains("Reached from steps 8, 9 and 10.")
        .doesNotContain("Go to step 2.")
        .contains("This can't be taken back.");
  }

  @Test
  void guideStartsWithItsToolsAndItsQuestions() {
    assertThat(all)
        .contains("On average 1.3 of 2 questions are asked, and the work takes 96 min")
        .contains("meter pick")
        .contains("mirror trim wedge");
    assertThat(all.indexOf("mirror trim wedge")).isLessThan(all.indexOf("The parts of the work"));
  }

  @Test
  void hasAFormForEachValueWithItsBandAndWhatToDoOutside() {
    assertThat(cells)
        .contains(flat("Voltage at the heater plug Only in case A1."))
        .contains(flat("11.2 V or more Outside: Look at the ground. The heater's paper."))
        .contains(flat("The heater works"))
        .contains(flat("If not: Look at its fuse."))
        .contains(flat("lamp bright (11.5 V or more)"))
        .contains(flat("A number that no answer names is none of them"));
  }

  @Test
  void leavesRoomForWhatLooksOtherwiseAfterEachPart() {
    assertThat(all.split("It does not look like that", -1)).hasSize(1 + 5);
  }

  @Test
  void cautionsOfThePackAreThoseOfTheGuide() {
    assertThat(cells)
        .contains(
            flat(
                "Belt pretensioner within reach Isolate the battery and wait 2 min before work near"
                    + " its yellow wiring. Guide, step 1"));
  }

  @Test
  void saysWhereCavitiesAreInTheFittersView() {
    assertThat(cells)
        .contains(flat("looking at the mating side, latch left. Slot 9: top right corner."))
        .contains(flat("looking at the wire side, latch down. Cavity 1: bottom right corner."));
  }

  @Test
  void givesBenchFacts() {
    assertThat(all)
        .contains("crimp height 1.12 mm")
        .contains("seal S-15")
        .contains("tool hex die 3")
        .contains("2605");
    assertThat(cells)
        .contains(flat("cut off, then spliced into the factory auxiliary feed"))
        .contains(flat("park at left B-pillar foot, cap CAP-1"));
  }

  @Test
  void keepsForgedAndForeignWords() {
    assertThat(cells).contains(flat(SamplePlan.FORGED)).contains(flat(SamplePlan.LONG));
    assertThat(all).contains("S1 <&\"'").contains("mm²").contains("✕").contains("−1 %");
  }

  /** Fixed spaces as they were before typesetting. */
  private static String plain(String text) {
    return text.replace('\u00A0', ' ').replace('\u202F', ' ').replaceAll(" +", " ");
  }

  /** Without the line breaks that columns make. */
  private static String flat(String text) {
    return text.replaceAll("\\s+", "");
  }
}
