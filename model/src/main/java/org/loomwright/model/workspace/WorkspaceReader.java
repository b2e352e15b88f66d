package org.loomwright.model.workspace;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.document.Document;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.finding.Finding;
import org.loomwright.model.job.Job;
import org.loomwright.model.json.DocumentBinder;
import org.loomwright.model.json.Fault;
import org.loomwright.model.json.JsonText;
import org.loomwright.model.kit.Kit;
import org.loomwright.model.parts.Parts;
import org.loomwright.model.picture.Pictures;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.stock.Batch;
import org.loomwright.model.vehicle.Vehicle;
import tools.jackson.databind.JsonNode;

/**
 * Reads documents as one workspace and finds everything that is wrong in one go: files that can't
 * be read, broken JSON, values that can't be what they should be, and references that lead nowhere.
 */
public final class WorkspaceReader {
  /** Kind of what a plan is written as; such files may lie in the folder and are passed over. */
  private static final String RESULT = "plan";

  private WorkspaceReader() {}

  /**
   * Reads a folder: its files ending in {@code .json} and those of the folders directly in it,
   * sorted by name, and the pictures they name. Deeper folders, names that start with a dot, and
   * results of planning ({@code "kind": "plan"}) are passed over.
   */
  public static Read read(Path folder) {
    FolderTexts found = FolderTexts.of(folder);
    return read(found.texts(), found.problems(), Optional.of(FolderPictures.of(folder)));
  }

  /** Reads texts that need not lie in a folder. Pictures they name are not looked for. */
  public static Read read(List<NamedText> texts) {
    return read(texts, List.of(), Optional.empty());
  }

  /**
   * Reads texts and pictures that need not lie in a folder.
   *
   * @param pictures bytes of all picture files, by name
   */
  public static Read read(List<NamedText> texts, Map<String, byte[]> pictures) {
    return read(texts, List.of(), Optional.of(name -> Optional.ofNullable(pictures.get(name))));
  }

  private static Read read(
      List<NamedText> texts, List<Problem> found, Optional<PictureSource> pictureSource) {
    List<Problem> problems = new ArrayList<>(found);
    List<Source> sources = new ArrayList<>();
    boolean complete = found.isEmpty();
    for (NamedText text : texts) {
      JsonText.Parsed parsed = JsonText.parse(withoutMark(text.text()));
      if (parsed instanceof JsonText.Broken broken) {
        problems.add(problem(text.name(), broken.fault()));
        complete = false;
      } else if (parsed instanceof JsonText.Tree tree && !isResult(tree.node())) {
        Source source = new Source(text.name(), tree.node(), DocumentBinder.bind(tree.node()));
        source.bound().faults().forEach(fault -> problems.add(problem(text.name(), fault)));
        complete &= source.bound().kind().isPresent();
        sources.add(source);
      }
    }
    Pictures pictures =
        pictureSource
            .map(it -> PictureChecks.read(sources, it, problems))
            .orElseGet(Pictures::none);
    problems.addAll(WorkspaceChecks.problems(sources, complete, pictures));
    if (sources.isEmpty() && problems.isEmpty()) {
      problems.add(new Problem("", "", "", "there is no document to read"));
    }
    if (!problems.isEmpty()) {
      problems.sort(Comparator.comparing(Problem::document));
      return new Read.Bad(problems);
    }
    return good(sources, pictures);
  }

  /** Some editors start a file with a byte order mark. */
  private static String withoutMark(String text) {
    return text.startsWith("\ufeff") ? text.substring(1) : text;
  }

  private static boolean isResult(JsonNode tree) {
    return tree.path("kind").isString() && tree.path("kind").stringValue().equals(RESULT);
  }

  private static Problem problem(String file, Fault fault) {
    return new Problem(file, fault.path(), fault.value(), fault.message());
  }

  private static Read good(List<Source> sources, Pictures pictures) {
    List<LoadedFile> files =
        sources.stream()
            .map(it -> new LoadedFile(it.file(), it.bound().good().orElseThrow()))
            .toList();
    return new Read.Good(
        new Workspace(
            all(files, Vehicle.class),
            all(files, Equipment.class),
            all(files, Kit.class),
            all(files, Parts.class),
            all(files, Rules.class),
            all(files, Finding.class),
            all(files, Job.class),
            all(files, Batch.class),
            pictures),
        files);
  }

  private static <T extends Document> List<T> all(List<LoadedFile> files, Class<T> type) {
    return files.stream()
        .map(LoadedFile::document)
        .filter(type::isInstance)
        .map(type::cast)
        .toList();
  }
}
