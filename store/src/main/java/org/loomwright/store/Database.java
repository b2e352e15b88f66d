package org.loomwright.store;

import com.zaxxer.hikari.HikariDataSource;
import java.util.Arrays;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Function;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.MigrationInfo;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;

/** The connections to one database, its tables brought up to date. */
final class Database implements AutoCloseable {
  private static final String SCRIPTS = "classpath:org/loomwright/store/db/";

  private final StoreTarget target;
  private final Vendor vendor;
  private final HikariDataSource pool;
  private final Jdbi jdbi;

  /** Writers of this program wait in line here; the file's own lock serves nobody in turn. */
  private final ReentrantLock line = new ReentrantLock(true);

  private Database(StoreTarget target, Vendor vendor, HikariDataSource pool) {
    this.target = target;
    this.vendor = vendor;
    this.pool = pool;
    this.jdbi = Jdbi.create(pool);
  }

  static Database open(StoreTarget target) {
    Vendor vendor = Vendor.of(target);
    HikariDataSource pool;
    try {
      pool = new HikariDataSource(Vendor.pool(target));
    } catch (RuntimeException e) {
      throw Failures.of(e, target);
    }
    try {
      migrate(pool, vendor, target);
      return new Database(target, vendor, pool);
    } catch (RuntimeException e) {
      pool.close();
      throw Failures.of(e, target);
    }
  }

  private static void migrate(HikariDataSource pool, Vendor vendor, StoreTarget target) {
    Flyway flyway =
        Flyway.configure()
            .dataSource(pool)
            .loggers("slf4j")
            .locations(SCRIPTS + "tables", SCRIPTS + vendor.scripts())
            .placeholders(vendor.placeholders())
            .load();
    MigrationInfo[] known = flyway.info().all();
    if (Arrays.stream(known).anyMatch(it -> it.getState().name().startsWith("FUTURE"))) {
      throw new StoreException(
          target.shown() + " was written by a newer Loomwright; open it with that one");
    }
    flyway.migrate();
  }

  StoreTarget target() {
    return target;
  }

  Vendor vendor() {
    return vendor;
  }

  /** Does all of the work or none of it, one writer after the other. */
  <T> T write(Function<Handle, T> work) {
    line.lock();
    try {
      return jdbi.inTransaction(
          handle -> {
            vendor.lockWrites().ifPresent(sql -> handle.createQuery(sql).mapToMap().list());
            return work.apply(handle);
          });
    } catch (RuntimeException e) {
      throw Failures.of(e, target);
    } finally {
      line.unlock();
    }
  }

  /** Reads one state of the data, however long it takes; others can write meanwhile. */
  <T> T read(Function<Handle, T> work) {
    try (Handle handle = jdbi.open()) {
      handle.execute(vendor.beginRead());
      try {
        return work.apply(handle);
      } finally {
        handle.execute("ROLLBACK");
      }
    } catch (RuntimeException e) {
      throw Failures.of(e, target);
    }
  }

  @Override
  public void close() {
    pool.close();
  }
}
