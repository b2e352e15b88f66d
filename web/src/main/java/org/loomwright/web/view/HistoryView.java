package org.loomwright.web.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.difference.Difference;
import org.loomwright.model.difference.DocumentDifference;
import org.loomwright.model.json.JsonText;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Revision;
import org.loomwright.store.Store;
import org.loomwright.store.Version;

/**
 * What became of a document, save by save.
 *
 * @param key the document
 * @param entries its revisions, newest first
 */
public record HistoryView(DocumentKey key, List<Entry> entries) {

  /**
   * One save.
   *
   * @param revision the revision
   * @param differences what it changed, in words
   * @param merged whether it took in what someone else had saved in the meantime
   */
  public record Entry(Revision revision, List<String> differences, boolean merged) {
    public Entry {
      differences = List.copyOf(differences);
    }
  }

  public HistoryView {
    entries = List.copyOf(entries);
  }

  /** The newest revision. */
  public long newest() {
    return entries.isEmpty() ? 0 : entries.get(0).revision().number();
  }

  /** Whether the document is in use. */
  public boolean used() {
    return !entries.isEmpty() && !entries.get(0).revision().retired();
  }

  /** The history of a document. */
  public static HistoryView of(Store store, DocumentKey key) {
    List<Entry> entries = new ArrayList<>();
    Optional<Version> after = Optional.empty();
    for (Revision it : store.documents().history(key)) {
      Optional<Version> version = store.documents().version(key, it.number());
      after.ifPresent(later -> entries.add(entry(version, later)));
      after = version;
    }
    after.ifPresent(first -> entries.add(entry(Optional.empty(), first)));
    return new HistoryView(key, entries);
  }

  private static Entry entry(Optional<Version> before, Version after) {
    Revision revision = after.revision();
    List<String> words =
        before.map(it -> differences(it, after)).orElse(List.of("The document is new."));
    boolean merged = revision.number() > 1 && revision.basedOn() < revision.number() - 1;
    return new Entry(revision, words, merged);
  }

  /** What differs between two revisions, in words; as they stand in a list. */
  public static List<String> differences(Version before, Version after) {
    if (after.revision().retired() != before.revision().retired()) {
      return List.of(after.revision().retired() ? "No longer used." : "Used again.");
    }
    if (JsonText.parse(before.content()) instanceof JsonText.Tree one
        && JsonText.parse(after.content()) instanceof JsonText.Tree two) {
      return DocumentDifference.between(one.node(), two.node()).stream()
          .map(Difference::words)
          .toList();
    }
    return List.of("The text was changed.");
  }
}
