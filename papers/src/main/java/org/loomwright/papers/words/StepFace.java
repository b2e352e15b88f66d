package org.loomwright.papers.words;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.drawing.CavityMark;
import org.loomwright.drawing.Face;
import org.loomwright.drawing.FaceWords;
import org.loomwright.drawing.Lettering;
import org.loomwright.model.design.Shown;
import org.loomwright.model.parts.Housing;

/**
 * The face beside a step of the guide, in the view the fitter has, with the places in words.
 *
 * @param svg picture
 * @param words owner, view and position of each cavity, one a line
 */
public record StepFace(String svg, String words) {

  /**
   * Draws the face that a step shows.
   *
   * @param names the kit, its plan and the names in it
   * @param shown what the step shows
   * @param widthMostMm widest picture wanted, mm
   * @param heightMostMm highest picture wanted, mm
   * @param lettering how text gets into the picture
   * @return empty when the kit's parts have no such housing
   */
  public static Optional<StepFace> of(
      Names names, Shown shown, double widthMostMm, double heightMostMm, Lettering lettering) {
    return names
        .order()
        .parts()
        .housing(shown.housing())
        .map(
            housing -> {
              List<String> cavities =
                  shown.cavities().stream().filter(it -> housing.cavity(it).isPresent()).toList();
              Map<String, CavityMark> marks = new LinkedHashMap<>();
              cavities.forEach(it -> marks.put(it, CavityMark.SOUGHT));
              return new StepFace(
                  Face.svg(housing, shown.view(), marks, widthMostMm, heightMostMm, lettering),
                  words(names, housing, shown, cavities));
            });
  }

  private static String words(Names names, Housing housing, Shown shown, List<String> cavities) {
    StringBuilder words = new StringBuilder(Figures.capital(names.owner(shown.owner())));
    words.append(", looking at the ").append(FaceWords.view(housing, shown.view())).append('.');
    boolean slots = names.order().vehicle().fuseBlock(shown.owner()).isPresent();
    for (String cavity : cavities) {
      words
          .append('\n')
          .append(slots ? "Slot " : "Cavity ")
          .append(cavity)
          .append(": ")
          .append(FaceWords.position(housing, shown.view(), cavity))
          .append('.');
    }
    return words.toString();
  }
}
