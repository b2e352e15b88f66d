package org.loomwright.papers;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.loomwright.drawing.Lettering;
import org.loomwright.drawing.board.BoardPlan.Sheet;
import org.loomwright.drawing.board.BoardSvg;
import org.loomwright.drawing.board.kit.HarnessBoard;
import org.loomwright.drawing.board.kit.LeadLengthCheck;
import org.loomwright.drawing.ink.RenderedTexts;
import org.loomwright.drawing.map.RunMap;
import org.loomwright.model.design.Plan;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.papers.section.CalculationDocument;
import org.loomwright.papers.section.Pack;
import org.loomwright.papers.section.PackDocument;
import org.loomwright.papers.words.Names;
import org.loomwright.planner.plan.Planner;

/**
 * All pictures of random kits, planned for real, as a browser sets them: no text lies on another or
 * leaves its picture. Twenty kits each time; {@code -Dpapers.kits=50} looks at more.
 */
class ManyKitsTest {
  private static final Pattern SVG = Pattern.compile("<svg .*?</svg>", Pattern.DOTALL);
  private static final int KITS = Integer.getInteger("papers.kits", 14);
  private static final int KITS_AT_ONCE = 7;

  /** Width of a map that reads well on a phone, mm. */
  private static final double PHONE_MM = 98;

  static IntStream firstSeeds() {
    return IntStream.iterate(0, it -> it < KITS, it -> it + KITS_AT_ONCE);
  }

  @ParameterizedTest
  @MethodSource("firstSeeds")
  void noTextLiesOnAnother(int firstSeed) {
    List<String> pictures = new ArrayList<>();
    for (int i = 0; i < KITS_AT_ONCE; i++) {
      long seed = firstSeed + i;
      KitOrder order = RandomKits.of(seed);
      Plan plan = Planner.plan(order);
      int before = pictures.size();
      papers(new Pack(new Names(order, plan), Lettering.fitted()), pictures);
      pictures.add(
          RunMap.svg(plan, order.vehicle(), Optional.empty(), PHONE_MM, Lettering.fitted()));
      boards(plan, order, pictures);
      assertThat(pictures.size() - before)
          .as("pictures of seed %s", seed)
          .isGreaterThan(plan.harness().bundles().size() + plan.protections().size() + 3);
    }
    RenderedTexts seen = RenderedTexts.of(pictures);
    assertThat(seen.overlaps()).as("text over text, pictures %s", pictures.size()).isEmpty();
    assertThat(seen.outside()).as("text outside its picture").isEmpty();
    assertThat(seen.count()).isGreaterThan(10 * pictures.size() / 2);
  }

  private static void papers(Pack pack, List<String> pictures) {
    for (String html : List.of(PackDocument.of(pack), CalculationDocument.of(pack))) {
      Matcher found = SVG.matcher(html);
      while (found.find()) {
        pictures.add(found.group());
      }
    }
  }

  private static void boards(Plan plan, KitOrder order, List<String> pictures) {
    List<HarnessBoard> boards = HarnessBoard.of(plan, order);
    assertThat(LeadLengthCheck.check(plan, boards)).isEmpty();
    for (HarnessBoard board : boards) {
      for (Sheet sheet : board.plan().sheets()) {
        pictures.add(BoardSvg.document(board.plan(), sheet, board.words()));
      }
    }
  }
}
