package org.loomwright.web.shop;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.loomwright.model.document.Document;
import org.loomwright.model.json.DocumentKind;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Documents;
import org.loomwright.store.Revision;
import org.loomwright.store.Store;

/** What the pages work with: the documents, the plans of the kits, and the store behind both. */
public final class Workbench implements AutoCloseable {
  private final Shop.Reader reader;
  private final PlanDesk desk = new PlanDesk();
  private final JobDesk jobs = new JobDesk(desk);
  // Comparing two plans of one kit takes two desks, as each keeps one plan of a kit.
  private final List<PlanDesk> sides = List.of(new PlanDesk(), new PlanDesk());
  private final ImpactDesk impacts = new ImpactDesk();
  private final Optional<Store> store;
  private final Optional<Example> example;

  private Workbench(ShopSource source, Optional<Store> store, Optional<Example> example) {
    this.reader = new Shop.Reader(source);
    this.store = store;
    this.example = example;
  }

  /** Documents that can be looked at only. */
  public static Workbench reading(ShopSource source) {
    return new Workbench(source, Optional.empty(), Optional.empty());
  }

  /**
   * Documents of a store, which pages can change. The store is closed by who opened it.
   *
   * @param where where it is, in words
   * @param example what an empty store can be filled with
   */
  public static Workbench on(Store store, String where, Example example) {
    return new Workbench(new StoreSource(store, where), Optional.of(store), Optional.of(example));
  }

  /** The documents as they are now. */
  public Shop now() {
    return reader.now();
  }

  /** Plans of the kits. */
  public PlanDesk desk() {
    return desk;
  }

  /** Plans of the kits that jobs are about. */
  public JobDesk jobs() {
    return jobs;
  }

  /** Two more desks, for the plans of two revisions beside each other. */
  public List<PlanDesk> sides() {
    return sides;
  }

  /** What changes of vehicles do to their kits. */
  public ImpactDesk impacts() {
    return impacts;
  }

  /** The store; absent where documents can be looked at only. */
  public Optional<Store> store() {
    return store;
  }

  /** Example documents that an empty store can be filled with. */
  public Optional<Example> example() {
    return example;
  }

  /** All documents of the store but pictures, readable or not; none where there is no store. */
  public List<DocumentKey> keys() {
    return keys(Documents::newest);
  }

  /** Documents that are no longer used. */
  public List<DocumentKey> retired() {
    return keys(Documents::retired);
  }

  private List<DocumentKey> keys(Function<Documents, List<Revision>> which) {
    return store.stream()
        .flatMap(it -> which.apply(it.documents()).stream())
        .map(Revision::key)
        .filter(it -> !it.kind().equals(DocumentKey.PICTURE))
        .toList();
  }

  /** Number of a document's newest revision; 0 where there are none. */
  public long number(Document document) {
    DocumentKey key = new DocumentKey(DocumentKind.of(document).word(), document.id());
    return store
        .flatMap(it -> it.documents().newest(key))
        .map(it -> it.revision().number())
        .orElse(0L);
  }

  /** Stops planning. */
  @Override
  public void close() {
    desk.close();
    jobs.close();
    sides.forEach(PlanDesk::close);
    impacts.close();
  }
}
