package org.loomwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Draft;
import org.loomwright.store.ImportResult;
import org.loomwright.store.Signature;
import org.loomwright.store.Store;
import org.loomwright.store.StoreTarget;

/** A store with the demo's documents, and pages open on it. */
public final class DemoStore implements AutoCloseable {
  public static final DocumentKey VAN = new DocumentKey("vehicle", "packer");

  private final Store store;
  private final Pages pages;

  private DemoStore(Store store) {
    this.store = store;
    try {
      this.pages = Pages.open(store, "the test", DemoStore::demo, 0);
    } catch (PortTakenException taken) {
      throw new AssertionError(taken);
    }
  }

  private static ImportResult demo(Store store, Signature by) {
    return store.workspaces().importFolder(Path.of("..", "demo"), by);
  }

  /** With the demo in it. */
  public static DemoStore in(Path folder) {
    Store store = Store.open(StoreTarget.parse(folder.resolve("shop.db").toString()));
    ImportResult result = demo(store, new Signature("Test", "the demo"));
    assertThat(result).isInstanceOf(ImportResult.Done.class);
    return new DemoStore(store);
  }

  /** With nothing in it. */
  public static DemoStore emptyIn(Path folder) {
    return new DemoStore(Store.open(StoreTarget.parse(folder.resolve("shop.db").toString())));
  }

  public Store store() {
    return store;
  }

  public Pages pages() {
    return pages;
  }

  /** Text of the newest revision. */
  public String text(DocumentKey key) {
    return store.documents().newest(key).orElseThrow().content();
  }

  /** Number of the newest revision. */
  public long number(DocumentKey key) {
    return store.documents().newest(key).orElseThrow().revision().number();
  }

  /** Replaces a text, once, in a document, as someone else would. */
  public void edit(DocumentKey key, String what, String by, String who) {
    String text = text(key);
    assertThat(text).contains(what);
    store
        .documents()
        .save(new Draft(key, text.replace(what, by), new Signature(who, "")), number(key));
  }

  @Override
  public void close() {
    pages.close();
    store.close();
  }
}
