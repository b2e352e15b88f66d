package org.loomwright.papers;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.loomwright.model.design.Plan;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.papers.board.BoardFiles;
import org.loomwright.papers.fit.FitCheckPage;
import org.loomwright.papers.hand.HandGuide;
import org.loomwright.papers.page.Fonts;
import org.loomwright.papers.page.OutlineLettering;
import org.loomwright.papers.page.PdfFile;
import org.loomwright.papers.section.CalculationDocument;
import org.loomwright.papers.section.Pack;
import org.loomwright.papers.section.PackDocument;
import org.loomwright.papers.words.Names;
import org.loomwright.planner.fit.FitCheck;

/** Writes the pack of a kit: what is needed to make, price, fit and judge it. */
public final class PackWriter {
  private PackWriter() {}

  /**
   * Writes {@code pack.pdf}, {@code calculations.pdf}, {@code leads.csv}, {@code cut-list.xlsx},
   * {@code parts.xlsx}, the files of the build board, the fitting guide as {@code guide.html},
   * {@code fit-check.html} and {@code result.json}. Files of these names are replaced, and drawings
   * of board sheets that the harness no longer has are removed; nothing else is touched. All are
   * made before the first is written, so a pack is never half of one plan and half of another.
   *
   * @param order the kit with its documents
   * @param plan its plan
   * @param outDir folder, made if it is not there
   * @param stamp what it says of the kit beyond its plan
   * @return the files, in the order named
   * @throws IOException when a file can't be written
   * @throws org.loomwright.drawing.board.BoardTooSmall when the harness finds no room on the board
   *     of the rules
   */
  public static List<Path> write(KitOrder order, Plan plan, Path outDir, PackStamp stamp)
      throws IOException {
    Names names = new Names(order, plan);
    Map<String, byte[]> files = new LinkedHashMap<>();
    Fonts fonts = Fonts.load();
    Pack pack = new Pack(names, new OutlineLettering(fonts));
    files.put("pack.pdf", PdfFile.of(PackDocument.of(pack), fonts));
    files.put("calculations.pdf", PdfFile.of(CalculationDocument.of(pack), fonts));
    files.put("leads.csv", LeadsCsv.of(names).getBytes(StandardCharsets.UTF_8));
    files.put("cut-list.xlsx", CutListBook.of(names));
    files.put("parts.xlsx", PartsBook.of(names));
    files.putAll(BoardFiles.of(plan, order, fonts));
    files.put(
        "guide.html",
        HandGuide.text(order, plan, stamp.release()).getBytes(StandardCharsets.UTF_8));
    files.put(
        "fit-check.html",
        FitCheckPage.text(order, plan, FitCheck.of(order, plan), stamp.verifiedOn())
            .getBytes(StandardCharsets.US_ASCII));
    files.put("result.json", PlanJson.text(plan).getBytes(StandardCharsets.UTF_8));
    Files.createDirectories(outDir);
    removeOldSheets(outDir, files.keySet());
    List<Path> written = new ArrayList<>();
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      written.add(Files.write(outDir.resolve(file.getKey()), file.getValue()));
    }
    return List.copyOf(written);
  }

  /** As {@link #write(KitOrder, Plan, Path, PackStamp)}, for a kit that is not released. */
  public static List<Path> write(KitOrder order, Plan plan, Path outDir) throws IOException {
    return write(order, plan, outDir, PackStamp.none());
  }

  // A sheet left from an earlier plan would be built to its old lengths.
  private static void removeOldSheets(Path folder, Set<String> fresh) throws IOException {
    List<Path> old;
    try (Stream<Path> files = Files.list(folder)) {
      old =
          files
              .filter(it -> it.getFileName().toString().matches("board-\\d+\\.(svg|dxf)"))
              .filter(it -> !fresh.contains(it.getFileName().toString()))
              .toList();
    }
    for (Path file : old) {
      Files.delete(file);
    }
  }
}
