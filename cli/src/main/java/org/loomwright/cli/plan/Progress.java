package org.loomwright.cli.plan;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;

/**
 * Shows on a terminal what long work is at, as one line that is wiped out when the work is over.
 * What ends within a second shows nothing.
 */
final class Progress implements AutoCloseable {
  private static final Path ERROR_STREAM = Path.of("/proc/self/fd/2");

  private final PrintWriter err;
  private final String what;
  private final ScheduledExecutorService clock;
  private int seconds;
  private int shown;

  private Progress(PrintWriter err, String what, boolean terminal) {
    this.err = err;
    this.what = what;
    this.clock =
        Executors.newSingleThreadScheduledExecutor(
            work -> {
              Thread thread = new Thread(work, "progress");
              thread.setDaemon(true);
              return thread;
            });
    if (terminal) {
      var unused = clock.scheduleAtFixedRate(this::tick, 1, 1, TimeUnit.SECONDS);
    }
  }

  /**
   * Starts to show the work, if standard error is a terminal.
   *
   * @param what what is done, in words
   */
  static Progress of(PrintWriter err, String what) {
    return new Progress(err, what, isTerminal());
  }

  private synchronized void tick() {
    seconds++;
    String line = what + " … " + seconds + " s";
    shown = line.length();
    err.print("\r" + line);
    err.flush();
  }

  @Override
  public synchronized void close() {
    clock.shutdownNow();
    if (shown > 0) {
      err.print("\r" + " ".repeat(shown) + "\r");
      err.flush();
      shown = 0;
    }
  }

  /** Java knows a console only when all streams are one, so the stream itself is asked first. */
  private static boolean isTerminal() {
    try {
      if (Files.exists(ERROR_STREAM)) {
        String target = ERROR_STREAM.toRealPath().toString();
        return target.startsWith("/dev/pts/") || target.startsWith("/dev/tty");
      }
    } catch (IOException unknown) {
      // A pipe has no real path: not a terminal.
      return false;
    }
    return System.console() != null;
  }
}
