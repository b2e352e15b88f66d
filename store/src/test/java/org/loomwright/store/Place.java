package org.loomwright.store;

import java.nio.file.Path;

/** The databases every test of the store runs on. */
enum Place {
  SQLITE {
    @Override
    StoreTarget fresh(Path folder) {
      return new StoreTarget.SqliteFile(folder.resolve("shop " + next() + ".db"));
    }
  },
  POSTGRES {
    @Override
    StoreTarget fresh(Path folder) {
      return new StoreTarget.PostgresServer(PostgresServerForTests.freshDatabase());
    }
  };

  private static final java.util.concurrent.atomic.AtomicInteger NEXT =
      new java.util.concurrent.atomic.AtomicInteger();

  /** A target that holds nothing yet. */
  abstract StoreTarget fresh(Path folder);

  static int next() {
    return NEXT.incrementAndGet();
  }
}
