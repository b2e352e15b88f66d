package org.loomwright.model.workspace;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** The texts of a folder's JSON files. */
final class FolderTexts {
  private final Path folder;
  private final List<NamedText> texts = new ArrayList<>();
  private final List<Problem> problems = new ArrayList<>();

  private FolderTexts(Path folder) {
    this.folder = folder;
  }

  /** Reads the files ending in .json of a folder and of the folders directly in it. */
  static FolderTexts of(Path folder) {
    FolderTexts texts = new FolderTexts(folder);
    if (!Files.exists(folder)) {
      texts.problem(folder.toString(), "there is no such folder");
    } else if (!Files.isDirectory(folder)) {
      texts.problem(
          folder.toString(), "this is a file; give the folder that holds the documents instead");
    } else {
      texts.readAll();
    }
    return texts;
  }

  List<NamedText> texts() {
    return texts;
  }

  List<Problem> problems() {
    return problems;
  }

  private void readAll() {
    List<Path> files = new ArrayList<>();
    for (Path child : children(folder)) {
      if (Files.isDirectory(child)) {
        children(child).stream().filter(Files::isRegularFile).forEach(files::add);
      } else {
        files.add(child);
      }
    }
    files.stream()
        .filter(file -> file.getFileName().toString().endsWith(".json"))
        .sorted(Comparator.comparing(this::name))
        .forEach(this::read);
    if (texts.isEmpty() && problems.isEmpty()) {
      problem(
          folder.toString(), "the folder holds no document; documents are files ending in .json");
    }
  }

  private List<Path> children(Path parent) {
    try (Stream<Path> children = Files.list(parent)) {
      return children.filter(it -> !it.getFileName().toString().startsWith(".")).toList();
    } catch (IOException e) {
      problem(parent.toString(), "the folder can't be read (" + reason(e) + ")");
      return List.of();
    }
  }

  private void read(Path file) {
    try {
      String text =
          StandardCharsets.UTF_8
              .newDecoder()
              .decode(ByteBuffer.wrap(Files.readAllBytes(file)))
              .toString();
      texts.add(new NamedText(name(file), text));
    } catch (CharacterCodingException e) {
      problem(name(file), "the file is not text in UTF-8; save it as UTF-8");
    } catch (IOException e) {
      problem(name(file), "the file can't be read (" + reason(e) + ")");
    }
  }

  private String name(Path file) {
    return folder.relativize(file).toString().replace('\\', '/');
  }

  private static String reason(IOException e) {
    return e.getClass().getSimpleName() + (e.getMessage() == null ? "" : ": " + e.getMessage());
  }

  private void problem(String document, String message) {
    problems.add(new Problem(document, "", "", message));
  }
}
