package org.loomwright.store;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.jdbi.v3.core.Handle;
import org.loomwright.model.design.Verdict;
import org.loomwright.model.picture.Picture;
import org.loomwright.store.picture.CleanPicture;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Reads what {@link Backup} wrote into a store that holds nothing yet. */
final class Restore {
  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  private final Handle handle;
  private final Path file;
  private final BackupSummary.Counter counter = new BackupSummary.Counter();

  private Restore(Handle handle, Path file) {
    this.handle = handle;
    this.file = file;
  }

  /**
   * Reads all of it and checks it; the caller's transaction must end without a trace when this
   * fails.
   */
  static BackupSummary read(Handle handle, Vendor vendor, Path file) {
    Restore restore = new Restore(handle, file);
    try (InputStream in = Files.newInputStream(file);
        ZipInputStream zip = new ZipInputStream(in)) {
      BackupSummary summary = restore.read(zip);
      List<Damage> damages = Verification.of(handle, vendor);
      if (!damages.isEmpty()) {
        throw restore.damaged(damages.get(0).words());
      }
      return summary;
    } catch (IOException | JacksonException | DateTimeException | IllegalArgumentException e) {
      throw restore.damaged(e.toString());
    }
  }

  private BackupSummary read(ZipInputStream zip) throws IOException {
    JsonNode said = MAPPER.missingNode();
    for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
      String name = entry.getName();
      if (name.equals(Backup.REVISIONS)) {
        lines(zip, this::revision);
      } else if (name.startsWith(Backup.BLOBS)) {
        blob(name.substring(Backup.BLOBS.length()), zip.readNBytes(Picture.LARGEST_BYTES + 1));
      } else if (name.startsWith(Backup.PAPERS)) {
        paper(name.substring(Backup.PAPERS.length()), zip.readNBytes(PackFiles.LARGEST_FILE + 1));
      } else if (name.equals(Backup.RELEASES)) {
        lines(zip, this::release);
      } else if (name.equals(Backup.SUMMARY)) {
        said = MAPPER.readTree(zip.readNBytes(10_000));
      } else {
        throw damaged("it holds '" + name + "', which is no part of a backup");
      }
    }
    BackupSummary summary = counter.summary();
    if (said.isMissingNode()) {
      throw damaged("it is cut off, or no backup");
    }
    int form = said.path("loomwrightBackup").asInt(0);
    if (form > Backup.FORM) {
      throw new StoreException(
          file + " was written by a newer Loomwright; restore it with that one");
    }
    // As texts, because numbers read and numbers counted may be of different width.
    if (!said.toString().equals(summary.tree(form).toString())) {
      throw damaged("it does not hold all that was written; counted was " + summary.tree(form));
    }
    return summary;
  }

  /** Takes one line. */
  private interface Line {
    void take(JsonNode tree) throws IOException;
  }

  private static void lines(ZipInputStream zip, Line line) throws IOException {
    // Not closed: that would close the zip.
    BufferedReader reader = new BufferedReader(new InputStreamReader(zip, StandardCharsets.UTF_8));
    for (String text = reader.readLine(); text != null; text = reader.readLine()) {
      line.take(MAPPER.readTree(text));
    }
  }

  private void revision(JsonNode tree) {
    if (tree instanceof ObjectNode row) {
      // Backups of form 1 have no retired documents, those of form 2 no papers of documents.
      row.putIfAbsent("retired", JsonNodeFactory.instance.booleanNode(false));
      row.putIfAbsent("papers", JsonNodeFactory.instance.stringNode(""));
    }
    RevisionRow row = MAPPER.treeToValue(tree, RevisionRow.class);
    Revisions.insert(handle, row.seq(), row.revision(), row.content(), row.seal());
    counter.revision(row.seal());
  }

  private void blob(String hash, byte[] bytes) {
    CleanPicture picture = CleanPicture.of(bytes);
    if (!Hashes.of(bytes).equals(hash)) {
      throw damaged("the picture " + hash + " has other bytes");
    }
    Blob blob = new Blob(hash, picture.mediaType(), picture.widthPx(), picture.heightPx());
    StoredPictures.insert(handle, blob, bytes);
    counter.blob();
  }

  private void paper(String hash, byte[] bytes) {
    if (!Hashes.of(bytes).equals(hash)) {
      throw damaged("the paper " + hash + " has other bytes");
    }
    PackFiles.insert(handle, hash, bytes);
    counter.paper();
  }

  private void release(JsonNode tree) {
    List<Release.PinnedText> pins = new ArrayList<>();
    for (JsonNode pin : tree.path("pins")) {
      DocumentKey key = new DocumentKey(pin.path("kind").asString(), pin.path("id").asString());
      pins.add(
          new Release.PinnedText(
              new Pin(key, pin.path("number").asLong()), pin.path("contentHash").asString()));
    }
    Map<String, String> pack = new TreeMap<>();
    tree.path("pack").properties().forEach(it -> pack.put(it.getKey(), it.getValue().asString()));
    Release release =
        new Release(
            tree.path("kit").asString(),
            tree.path("number").asLong(),
            pins,
            Verdict.valueOf(tree.path("verdict").asString().toUpperCase(Locale.ROOT)),
            pack,
            tree.path("packKept").asBoolean(false),
            new Signature(tree.path("author").asString(), tree.path("reason").asString()),
            Instant.parse(tree.path("releasedAt").asString()));
    String seal = tree.path("seal").asString();
    ReleaseRows.insert(handle, tree.path("seq").asLong(), release, seal);
    counter.release(seal);
  }

  private StoreException damaged(String why) {
    return new StoreException(
        file + " can't be restored: " + why + "; nothing was restored, take another backup");
  }
}
