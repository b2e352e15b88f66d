package org.loomwright.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jdbi.v3.core.Handle;
import org.loomwright.model.workspace.NamedText;

/** Whole workspaces in and out: as a folder or as a zip file. */
public final class Workspaces {
  private final Database database;
  private final Documents documents;

  Workspaces(Database database, Documents documents) {
    this.database = database;
    this.documents = documents;
  }

  /** The newest state of everything in use, all from one moment. */
  public WorkspaceContent content() {
    return database.read(Workspaces::content);
  }

  /**
   * Takes in the documents of a folder and of the folders directly in it, and the pictures they
   * name. All or nothing; a document that is there already gets a new revision, which brings it
   * back when it was retired.
   *
   * @throws StoreException when the folder can't be read or is too large
   */
  public ImportResult importFolder(Path folder, Signature by) {
    return take(FolderFiles.read(folder), by);
  }

  /** As {@link #importFolder}, from a zip file. */
  public ImportResult importZip(Path file, Signature by) {
    try (InputStream in = Files.newInputStream(file)) {
      return importZip(in, file.toString(), by);
    } catch (IOException e) {
      throw new StoreException(file + " can't be read (" + e + "); name a zip file", e);
    }
  }

  /**
   * As {@link #importFolder}, from the bytes of a zip file.
   *
   * @param name its name, for messages
   */
  public ImportResult importZip(InputStream zip, String name, Signature by) {
    return take(ZipFiles.read(zip, name), by);
  }

  /**
   * Writes the newest state as a workspace.
   *
   * @param folder a new or empty folder
   * @return what was written
   */
  public WorkspaceContent exportFolder(Path folder) {
    WorkspaceContent content = content();
    FolderFiles.write(files(content), folder);
    return content;
  }

  /**
   * Writes the newest state as a zip file; the same state gives the same bytes.
   *
   * @param file a file that is not there yet
   * @return what was written
   */
  public WorkspaceContent exportZip(Path file) {
    WorkspaceContent content = content();
    ZipFiles.write(files(content), file);
    return content;
  }

  /** Writes the newest state as a zip file; leaves the stream open. */
  public void exportZip(OutputStream out) throws IOException {
    ZipFiles.write(files(content()), out);
  }

  private static WorkspaceFiles files(WorkspaceContent content) {
    Map<String, byte[]> files = new TreeMap<>(content.pictures());
    content
        .documents()
        .forEach(it -> files.put(it.name(), it.text().getBytes(StandardCharsets.UTF_8)));
    return new WorkspaceFiles(files);
  }

  private static WorkspaceContent content(Handle handle) {
    List<Version> newest = Revisions.newestVersions(handle);
    Map<String, Revision> revisions = new TreeMap<>();
    Map<String, byte[]> pictures = new TreeMap<>();
    for (Version version : newest) {
      DocumentKey key = version.revision().key();
      if (key.kind().equals(DocumentKey.PICTURE)) {
        String hash = StoredPictures.hashIn(version.content());
        pictures.put(
            key.id(),
            StoredPictures.bytes(handle, hash)
                .orElseThrow(
                    () ->
                        new StoreException(
                            key.shown() + " is damaged: its bytes are missing; restore a backup")));
        revisions.put(key.id(), version.revision());
      }
    }
    FileNames names = new FileNames(List.copyOf(pictures.keySet()));
    List<NamedText> documents = new ArrayList<>();
    for (Version version : newest) {
      if (!version.revision().key().kind().equals(DocumentKey.PICTURE)) {
        String name = names.of(version.revision().key());
        documents.add(new NamedText(name, version.content()));
        revisions.put(name, version.revision());
      }
    }
    return new WorkspaceContent(documents, pictures, revisions, Revisions.state(handle));
  }

  private ImportResult take(WorkspaceFiles files, Signature by) {
    ImportDrafts drafts = ImportDrafts.of(files, by);
    if (!drafts.problems().isEmpty()) {
      return new ImportResult.Refused(drafts.problems());
    }
    return database.write(handle -> take(handle, drafts, by));
  }

  private ImportResult take(Handle handle, ImportDrafts drafts, Signature by) {
    List<Revision> added = new ArrayList<>();
    List<Revision> changed = new ArrayList<>();
    List<String> pictures = new ArrayList<>();
    int unchanged = 0;
    for (Draft draft : drafts.documents()) {
      if (saveOnNewest(handle, draft) instanceof SaveResult.Saved saved) {
        (saved.revision().number() == 1 ? added : changed).add(saved.revision());
      } else {
        unchanged++;
      }
    }
    for (var picture : drafts.pictures().entrySet()) {
      Blob blob = StoredPictures.put(handle, picture.getValue());
      Draft naming = StoredPictures.naming(picture.getKey(), blob, by);
      if (saveOnNewest(handle, naming) instanceof SaveResult.Saved) {
        pictures.add(picture.getKey());
      }
    }
    return new ImportResult.Done(added, changed, unchanged, pictures);
  }

  private SaveResult saveOnNewest(Handle handle, Draft draft) {
    long newest =
        Revisions.newest(handle, draft.key()).map(it -> it.revision().number()).orElse(0L);
    return documents.save(handle, draft, newest);
  }
}
