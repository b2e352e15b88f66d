package org.loomwright.store;

import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.loomwright.model.json.JsonText;
import org.loomwright.store.picture.CleanPicture;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;

/**
 * Pictures by the hash of their bytes, and the file names under which documents speak of them. A
 * name is kept as a document of its own (kind {@link DocumentKey#PICTURE}), so that it has a
 * history: naming another picture loses none.
 */
public final class StoredPictures {
  private final Database database;
  private final Documents documents;

  StoredPictures(Database database, Documents documents) {
    this.database = database;
    this.documents = documents;
  }

  /**
   * Takes a picture in: decoded, turned upright, without notes such as the place where it was
   * taken. The same picture is kept once.
   *
   * @throws StoreException when it is neither PNG nor JPEG, too large or damaged
   */
  public Blob put(byte[] file) {
    CleanPicture picture = clean("the picture", file);
    return database.write(handle -> put(handle, picture));
  }

  /**
   * Takes a picture in under a file name.
   *
   * @param basedOn revision of the name the person knows of; 0 for a new name
   */
  public SaveResult put(String name, byte[] file, long basedOn, Signature by) {
    if (!WorkspaceFiles.isPicture(name) || !WorkspaceFiles.matters(name) || isOdd(name)) {
      throw new StoreException(
          "'"
              + name.replaceAll("\\p{Cntrl}", "?")
              + "' can't be the name of a picture; write FILE.png or FOLDER/FILE.jpg");
    }
    CleanPicture picture = clean(name, file);
    return database.write(
        handle -> documents.save(handle, naming(name, put(handle, picture), by), basedOn));
  }

  /** The bytes of a picture. */
  public Optional<byte[]> bytes(String hash) {
    return database.read(handle -> bytes(handle, hash));
  }

  /** What is known of a picture. */
  public Optional<Blob> find(String hash) {
    return database.read(handle -> find(handle, hash));
  }

  /** The hash of the picture that a file name stands for now. */
  public Optional<String> named(String name) {
    return documents
        .newest(new DocumentKey(DocumentKey.PICTURE, name))
        .map(it -> hashIn(it.content()));
  }

  /** Names that one of the usual systems would not take or take for something else. */
  private static boolean isOdd(String name) {
    return name.chars().anyMatch(c -> c < ' ' || "\\:*?\"<>|".indexOf(c) >= 0);
  }

  static CleanPicture clean(String name, byte[] file) {
    try {
      return CleanPicture.of(file);
    } catch (IllegalArgumentException e) {
      throw new StoreException(name + ": " + e.getMessage(), e);
    }
  }

  static Draft naming(String name, Blob blob, Signature by) {
    DocumentKey key = new DocumentKey(DocumentKey.PICTURE, name);
    String content =
        JsonNodeFactory.instance
            .objectNode()
            .put("kind", key.kind())
            .put("id", key.id())
            .put("blob", blob.hash())
            .toString();
    return new Draft(key, content, by);
  }

  /** The hash in the text that names a picture; empty when there is none. */
  static String hashIn(String content) {
    if (!(JsonText.parse(content) instanceof JsonText.Tree it)) {
      return "";
    }
    JsonNode hash = it.node().path("blob");
    return hash.isString() ? hash.stringValue() : "";
  }

  static Blob put(Handle handle, CleanPicture picture) {
    byte[] bytes = picture.bytes();
    Blob blob =
        new Blob(Hashes.of(bytes), picture.mediaType(), picture.widthPx(), picture.heightPx());
    if (find(handle, blob.hash()).isEmpty()) {
      insert(handle, blob, bytes);
    }
    return blob;
  }

  static void insert(Handle handle, Blob blob, byte[] bytes) {
    handle
        .createUpdate(
            "INSERT INTO blob (hash, media_type, width_px, height_px, bytes)"
                + " VALUES (:hash, :mediaType, :width, :height, :bytes)")
        .bind("hash", blob.hash())
        .bind("mediaType", blob.mediaType())
        .bind("width", blob.widthPx())
        .bind("height", blob.heightPx())
        .bind("bytes", bytes)
        .execute();
  }

  static Optional<Blob> find(Handle handle, String hash) {
    return handle
        .createQuery("SELECT hash, media_type, width_px, height_px FROM blob WHERE hash = :hash")
        .bind("hash", hash)
        .map(
            (row, context) ->
                new Blob(row.getString(1), row.getString(2), row.getInt(3), row.getInt(4)))
        .findFirst();
  }

  static Optional<byte[]> bytes(Handle handle, String hash) {
    return handle
        .createQuery("SELECT bytes FROM blob WHERE hash = :hash")
        .bind("hash", hash)
        .map((row, context) -> row.getBytes(1))
        .findFirst();
  }
}
