package org.loomwright.store;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.loomwright.model.json.JsonText;
import org.loomwright.model.workspace.Problem;
import org.loomwright.store.picture.CleanPicture;
import tools.jackson.databind.JsonNode;

/**
 * What is to be saved of the files of a workspace.
 *
 * @param documents drafts in the order of their files
 * @param pictures those that documents name, by file name
 * @param problems what is in the way; empty when all can be saved
 */
record ImportDrafts(
    List<Draft> documents, Map<String, CleanPicture> pictures, List<Problem> problems) {
  /** Kind of what a plan is written as; such files may lie in the folder and are passed over. */
  private static final String RESULT = "plan";

  static ImportDrafts of(WorkspaceFiles files, Signature by) {
    ImportDrafts drafts = new ImportDrafts(new ArrayList<>(), new TreeMap<>(), new ArrayList<>());
    Set<String> said = new HashSet<>();
    Map<DocumentKey, String> fileOf = new HashMap<>();
    files
        .byName()
        .forEach(
            (name, bytes) -> {
              if (WorkspaceFiles.isDocument(name)) {
                drafts.document(name, bytes, by, said, fileOf);
              }
            });
    files
        .byName()
        .forEach(
            (name, bytes) -> {
              if (WorkspaceFiles.isPicture(name) && said.contains(name)) {
                drafts.picture(name, bytes);
              }
            });
    if (drafts.documents.isEmpty() && drafts.problems.isEmpty()) {
      drafts.problem(
          "", "", "there is no document to take in; documents are files ending in .json");
    }
    return drafts;
  }

  private void document(
      String name, byte[] bytes, Signature by, Set<String> said, Map<DocumentKey, String> fileOf) {
    Optional<String> text = text(bytes);
    if (text.isEmpty()) {
      problem(name, "", "the file is not text in UTF-8; save it as UTF-8");
      return;
    }
    JsonText.Parsed parsed = JsonText.parse(text.get());
    if (parsed instanceof JsonText.Broken broken) {
      problem(name, broken.fault().path(), broken.fault().message());
      return;
    }
    JsonNode tree = ((JsonText.Tree) parsed).node();
    if (tree.path("kind").isString() && tree.path("kind").stringValue().equals(RESULT)) {
      return;
    }
    try {
      DocumentKey key =
          Content.keyOf(tree)
              .orElseThrow(
                  () ->
                      new StoreException(
                          "this is no document: it needs a \"kind\" such as \"vehicle\" and an"
                              + " \"id\", both as text"));
      if (key.kind().equals(DocumentKey.PICTURE)) {
        throw new StoreException("pictures are files of their own; there is no such document");
      }
      String first = fileOf.putIfAbsent(key, name);
      if (first != null) {
        throw new StoreException(key.shown() + " is already in " + first + "; take one out");
      }
      Content.of(key, text.get());
      strings(tree, said);
      documents.add(new Draft(key, text.get(), by));
    } catch (StoreException e) {
      problem(name, "", String.valueOf(e.getMessage()));
    }
  }

  private void picture(String name, byte[] bytes) {
    try {
      new DocumentKey(DocumentKey.PICTURE, name);
      pictures.put(name, CleanPicture.of(bytes));
    } catch (IllegalArgumentException | StoreException e) {
      problem(name, "", String.valueOf(e.getMessage()));
    }
  }

  private void problem(String file, String path, String message) {
    problems.add(new Problem(file, path, "", message));
  }

  private static Optional<String> text(byte[] bytes) {
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      // Some editors start a file with a byte order mark.
      return Optional.of(text.startsWith("\ufeff") ? text.substring(1) : text);
    } catch (CharacterCodingException e) {
      return Optional.empty();
    }
  }

  /** All texts in a document; a picture is named by one of them. */
  private static void strings(JsonNode node, Set<String> found) {
    if (node.isString()) {
      found.add(node.stringValue());
    }
    node.forEach(child -> strings(child, found));
  }
}
