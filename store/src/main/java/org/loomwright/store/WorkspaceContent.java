package org.loomwright.store;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.loomwright.model.workspace.NamedText;

/**
 * The newest state of all documents and pictures, as files of a workspace. {@code
 * WorkspaceReader.read(documents, pictures)} takes it as it is.
 *
 * @param documents texts by file name, sorted by kind and id
 * @param pictures bytes by the file name that documents use, sorted
 */
public record WorkspaceContent(List<NamedText> documents, Map<String, byte[]> pictures) {
  public WorkspaceContent {
    documents = List.copyOf(documents);
    pictures = Collections.unmodifiableMap(new TreeMap<>(pictures));
  }
}
