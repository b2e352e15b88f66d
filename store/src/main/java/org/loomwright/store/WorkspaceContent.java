package org.loomwright.store;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.loomwright.model.workspace.NamedText;

/**
 * The newest state of all documents and pictures in use, all of one moment, as files of a
 * workspace. {@code WorkspaceReader.read(documents, pictures)} takes it as it is.
 *
 * @param documents texts by file name, sorted by kind and id
 * @param pictures bytes by the file name that documents use, sorted
 * @param revisions the revision that each of these files is, by file name, sorted; pictures too
 * @param state {@link Store#state()} of the same moment
 */
public record WorkspaceContent(
    List<NamedText> documents,
    Map<String, byte[]> pictures,
    Map<String, Revision> revisions,
    long state) {
  public WorkspaceContent {
    documents = List.copyOf(documents);
    pictures = Collections.unmodifiableMap(new TreeMap<>(pictures));
    revisions = Collections.unmodifiableMap(new TreeMap<>(revisions));
  }

  /** Name of the file of a document, as {@link #with} gives it to one that is not there yet. */
  public String file(DocumentKey key) {
    return revisions.entrySet().stream()
        .filter(it -> it.getValue().key().equals(key))
        .map(Map.Entry::getKey)
        .findFirst()
        .orElse(key.id() + "." + key.kind() + ".json");
  }

  /** The documents with another text of one of them; one that is not there yet comes last. */
  public List<NamedText> with(DocumentKey key, String text) {
    NamedText own = new NamedText(file(key), text);
    List<NamedText> texts = new ArrayList<>(documents);
    texts.replaceAll(it -> it.name().equals(own.name()) ? own : it);
    if (!texts.contains(own)) {
      texts.add(own);
    }
    return texts;
  }

  /** The documents without one of them. */
  public List<NamedText> without(DocumentKey key) {
    String own = file(key);
    return documents.stream().filter(it -> !it.name().equals(own)).toList();
  }
}
