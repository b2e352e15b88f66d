package org.loomwright.store;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * A program of its own that saves without end from four threads and prints each save that was
 * acknowledged, until someone ends it or the database refuses.
 */
final class SavingProgram {
  private static final int WRITERS = 4;

  private SavingProgram() {}

  /** With the target, and what all documents' ids start with. */
  public static void main(String[] arguments) throws InterruptedException {
    PrintStream out = new PrintStream(System.out, true, StandardCharsets.UTF_8);
    try (Store store = Store.open(StoreTarget.parse(arguments[0]))) {
      List<Thread> writers = new ArrayList<>();
      for (int i = 0; i < WRITERS; i++) {
        DocumentKey key = new DocumentKey("job", arguments[1] + "-" + i);
        Thread writer = new Thread(() -> save(store, key, out));
        writers.add(writer);
        writer.start();
      }
      for (Thread writer : writers) {
        writer.join();
      }
    }
  }

  private static void save(Store store, DocumentKey key, PrintStream out) {
    String filler = "x".repeat(3_000);
    for (long n = 0; ; n++) {
      try {
        String rest = ", \"n\": " + n + ", \"filler\": \"" + filler + "\"";
        SaveResult result = store.documents().save(Samples.draft(key, rest, Samples.ANNA), n);
        Revision saved = ((SaveResult.Saved) result).revision();
        out.println("saved " + key.id() + " " + saved.number() + " " + saved.contentHash());
      } catch (StoreException e) {
        out.println("refused " + e.getMessage());
        return;
      }
    }
  }
}
