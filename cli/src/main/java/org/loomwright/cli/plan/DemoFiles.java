package org.loomwright.cli.plan;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.loomwright.cli.shell.WrongInput;
import org.loomwright.model.workspace.NamedText;
import org.loomwright.model.workspace.Read;
import org.loomwright.model.workspace.WorkspaceReader;
import org.loomwright.store.ImportResult;
import org.loomwright.store.Signature;
import org.loomwright.store.Store;

/** The documents of the demo: the project's folder where there is one, else those in the jar. */
final class DemoFiles {
  /** Files of the demo, as they are packed into the jar. */
  static final List<String> NAMES =
      List.of(
          "crew-comfort.kit.json",
          "floor-cavity-wire.finding.json",
          "heater-autumn.batch.json",
          "heater.equipment.json",
          "parts.parts.json",
          "rear-block-wire-side.png",
          "rules.rules.json",
          "side-steps.equipment.json",
          "step-lead-short.finding.json",
          "trailer-socket.equipment.json",
          "trailer.kit.json",
          "van-0288-trailer.job.json",
          "van-0417.job.json",
          "van-0533.job.json",
          "van-plan.png",
          "van.vehicle.json");

  /** Set by the launcher: the project's folder. */
  private static final String HOME = "loomwright.home";

  private final Optional<Path> folder;

  private DemoFiles(Optional<Path> folder) {
    this.folder = folder;
  }

  /** The demo of the project the program was started from, else the one it was built with. */
  static DemoFiles find() {
    return in(Optional.ofNullable(System.getProperty(HOME)).map(Path::of));
  }

  /** The demo of a project, else the one inside the program. */
  static DemoFiles in(Optional<Path> project) {
    return new DemoFiles(project.map(home -> home.resolve("demo")).filter(Files::isDirectory));
  }

  /** Where the documents are, in words. */
  String where() {
    return folder.map(Path::toString).orElse("the demo inside the program");
  }

  /** Reads them. */
  Read read() {
    return folder
        .map(WorkspaceReader::read)
        .orElseGet(
            () -> {
              List<NamedText> texts = new ArrayList<>();
              Map<String, byte[]> pictures = new LinkedHashMap<>();
              for (String name : NAMES) {
                byte[] bytes = packed(name);
                if (name.endsWith(".json")) {
                  texts.add(new NamedText(name, new String(bytes, StandardCharsets.UTF_8)));
                } else {
                  pictures.put(name, bytes);
                }
              }
              return WorkspaceReader.read(texts, pictures);
            });
  }

  /** Takes them into a store. */
  ImportResult into(Store store, Signature by) {
    if (folder.isPresent()) {
      return store.workspaces().importFolder(folder.get(), by);
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (String name : NAMES) {
        zip.putNextEntry(new ZipEntry(name));
        zip.write(packed(name));
        zip.closeEntry();
      }
    } catch (IOException failure) {
      throw new UncheckedIOException(failure);
    }
    return store.workspaces().importZip(new ByteArrayInputStream(bytes.toByteArray()), where(), by);
  }

  private static byte[] packed(String name) {
    try (InputStream stream = DemoFiles.class.getResourceAsStream("demo/" + name)) {
      if (stream == null) {
        throw new WrongInput("The program is not complete: it lacks the demo's " + name + ".");
      }
      return stream.readAllBytes();
    } catch (IOException failure) {
      throw new WrongInput(
          "The demo's " + name + " can't be read from the program: " + failure.getMessage() + ".");
    }
  }
}
