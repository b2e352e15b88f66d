package org.loomwright.web.shop;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.loomwright.model.job.Job;
import org.loomwright.model.json.DocumentBinder;
import org.loomwright.model.json.JsonText;
import org.loomwright.model.workspace.NamedText;
import org.loomwright.model.workspace.Problem;
import org.loomwright.model.workspace.Read;
import org.loomwright.model.workspace.WorkspaceReader;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Draft;
import org.loomwright.store.SaveResult;
import org.loomwright.store.Signature;
import org.loomwright.store.Store;
import org.loomwright.store.Version;
import org.loomwright.store.WorkspaceContent;
import org.loomwright.store.merge.JsonMerge;
import tools.jackson.databind.JsonNode;

/**
 * Saves documents, unless that would bring a problem into the workspace that was not there before.
 * So whatever pages save can be read, and what one document says of another is true.
 */
public final class Edits {
  /** What is said of a change to a job that is signed off or given up. */
  public static final Problem OVER =
      new Problem(
          "", "", "", "this job is over; open it again on its page, with a reason, to change it");

  private final Store store;

  /** Edits of a store. */
  public Edits(Store store) {
    this.store = store;
  }

  /** What became of an edit. */
  public sealed interface Outcome {}

  /**
   * Nothing was saved, because of these.
   *
   * @param problems those of the edited document first, without its name
   */
  public record Refused(List<Problem> problems) implements Outcome {
    public Refused {
      problems = List.copyOf(problems);
    }
  }

  /** What the store did. */
  public record Kept(SaveResult result) implements Outcome {}

  /**
   * Saves a document as its new revision.
   *
   * @param basedOn number of the revision the draft was made from; 0 for a new document
   */
  public Outcome save(Draft draft, long basedOn) {
    Optional<JsonNode> result = result(draft, basedOn);
    if (result.isPresent()) {
      List<Problem> problems =
          !isOf(draft.key(), result.get())
              ? List.of(otherDocument(draft.key(), result.get()))
              : changesWhatIsOver(draft, result.get())
                  ? List.of(OVER)
                  : broughtIn(draft.key(), result.get());
      if (!problems.isEmpty()) {
        return new Refused(problems);
      }
    }
    return result
        .flatMap(it -> notMoved(draft, it))
        .orElseGet(() -> new Kept(store.documents().save(draft, basedOn)));
  }

  /**
   * Moves the kit of a job in its batch. That is done first: a batch that has a kit fitted in a job
   * which does not say so yet contradicts nothing.
   */
  private Optional<Outcome> notMoved(Draft draft, JsonNode text) {
    for (StockMove it : StockMove.of(store.documents(), draft.key(), text)) {
      Signature by = new Signature(draft.by().who(), "serial number in job " + draft.key().id());
      SaveResult moved =
          store.documents().save(new Draft(it.batch().key(), it.text(), by), it.batch().number());
      if (moved instanceof SaveResult.Conflict) {
        return Optional.of(
            new Refused(
                List.of(
                    new Problem(
                        "",
                        "serial",
                        text.path("serial").asString(""),
                        "somebody just changed the batch of this kit; send this once more"))));
      }
    }
    return Optional.empty();
  }

  /**
   * Says that a document is no longer used, unless another still needs it. Its history stays.
   *
   * @param basedOn number of the revision the person knows of
   */
  public Outcome retire(DocumentKey key, long basedOn, Signature by) {
    WorkspaceContent content = store.workspaces().content();
    List<NamedText> rest = content.without(key);
    List<Problem> problems =
        rest.isEmpty() ? List.of() : added(content, rest, content.pictures(), "");
    return problems.isEmpty()
        ? new Kept(store.documents().retire(key, basedOn, by))
        : new Refused(problems);
  }

  /** What would be the newest text; empty where the store is going to refuse or to ask. */
  private Optional<JsonNode> result(Draft draft, long basedOn) {
    if (!(JsonText.parse(draft.content()) instanceof JsonText.Tree yours)) {
      return Optional.empty();
    }
    Optional<Version> newest = store.documents().newest(draft.key());
    if (newest.isEmpty() || newest.get().revision().number() == basedOn) {
      return Optional.of(yours.node());
    }
    Optional<Version> base = store.documents().version(draft.key(), basedOn);
    if (base.isPresent()
        && JsonText.parse(base.get().content()) instanceof JsonText.Tree before
        && JsonText.parse(newest.get().content()) instanceof JsonText.Tree theirs
        && JsonMerge.merge(before.node(), theirs.node(), yours.node())
            instanceof JsonMerge.Clean clean) {
      return Optional.of(clean.tree());
    }
    return Optional.empty();
  }

  private static Problem otherDocument(DocumentKey key, JsonNode text) {
    boolean kind = text.path("kind").asString("").equals(key.kind());
    String path = kind ? "id" : "kind";
    return new Problem(
        "",
        path,
        text.path(path).asString(""),
        "this is the text of " + key.shown() + "; its " + path + " must stay as it is");
  }

  /** A job that is over stays as it is, but for being opened again with a reason. */
  private boolean changesWhatIsOver(Draft draft, JsonNode after) {
    Optional<JsonNode> before =
        store.documents().newest(draft.key()).flatMap(it -> tree(it.content()));
    return before.filter(Edits::isOver).filter(it -> !it.equals(after)).isPresent()
        && (isOver(after) || draft.by().why().isBlank());
  }

  private static boolean isOver(JsonNode text) {
    return DocumentBinder.bind(text).good().orElse(null) instanceof Job job && job.isOver();
  }

  private static Optional<JsonNode> tree(String text) {
    return JsonText.parse(text) instanceof JsonText.Tree tree
        ? Optional.of(tree.node())
        : Optional.empty();
  }

  private List<Problem> broughtIn(DocumentKey key, JsonNode text) {
    WorkspaceContent content = store.workspaces().content();
    if (key.kind().equals(DocumentKey.PICTURE)) {
      return added(content, content.documents(), pictures(key, text, content), "");
    }
    List<NamedText> texts = new ArrayList<>(content.with(key, text.toString()));
    for (StockMove it : StockMove.of(store.documents(), key, text)) {
      NamedText moved = new NamedText(content.file(it.batch().key()), it.text());
      texts.replaceAll(one -> one.name().equals(moved.name()) ? moved : one);
    }
    return added(content, texts, content.pictures(), content.file(key));
  }

  /** The pictures with another one under a name. */
  private Map<String, byte[]> pictures(DocumentKey key, JsonNode text, WorkspaceContent content) {
    Map<String, byte[]> pictures = new TreeMap<>(content.pictures());
    store
        .pictures()
        .bytes(text.path("blob").asString(""))
        .ifPresent(it -> pictures.put(key.id(), it));
    return pictures;
  }

  /** Problems that are not there yet, those of one document first. */
  private static List<Problem> added(
      WorkspaceContent content, List<NamedText> texts, Map<String, byte[]> pictures, String own) {
    if (!(WorkspaceReader.read(texts, pictures) instanceof Read.Bad after)) {
      return List.of();
    }
    Set<Problem> before = new HashSet<>();
    if (WorkspaceReader.read(content.documents(), content.pictures()) instanceof Read.Bad bad) {
      before.addAll(bad.problems());
    }
    List<Problem> problems = new ArrayList<>();
    after.problems().stream()
        .filter(it -> it.document().equals(own) && !before.contains(it))
        .map(it -> new Problem("", it.path(), it.value(), it.message()))
        .forEach(problems::add);
    after.problems().stream()
        .filter(it -> !it.document().equals(own) && !before.contains(it))
        .forEach(problems::add);
    return problems;
  }

  private static boolean isOf(DocumentKey key, JsonNode text) {
    return text.path("kind").asString("").equals(key.kind())
        && text.path("id").asString("").equals(key.id());
  }
}
