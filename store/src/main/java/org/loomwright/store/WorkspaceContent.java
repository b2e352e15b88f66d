package org.loomwright.store;

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
}
