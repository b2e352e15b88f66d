package org.loomwright.cli.plan;

import java.io.PrintWriter;
import java.util.concurrent.CountDownLatch;
import org.loomwright.cli.shell.WrongInput;
import org.loomwright.store.Store;
import org.loomwright.web.Pages;
import org.loomwright.web.PortTakenException;
import org.loomwright.web.shop.Example;
import org.loomwright.web.shop.ShopSource;

/** Keeps pages open until the program is stopped. */
final class OpenPages {
  /** Port unless another is asked for. */
  static final String PORT = "8420";

  private static final int LARGEST_PORT = 65_535;

  private OpenPages() {}

  /**
   * Looks at a port before long work is done.
   *
   * @throws WrongInput when there is no such port
   */
  static void check(int port) {
    if (port < 0 || port > LARGEST_PORT) {
      throw new WrongInput(
          "--port: there is no port " + port + "; use a number from 0 to " + LARGEST_PORT + ".");
    }
  }

  /** Opens pages at a port. */
  @FunctionalInterface
  private interface Opener {
    Pages at(int port) throws PortTakenException;
  }

  /**
   * Opens pages that show documents, says where, and waits. Stopping the program closes them; so
   * does interrupting the thread.
   *
   * @throws WrongInput when there is no such port, or another program listens there
   */
  static void untilStopped(ShopSource source, int port, PrintWriter results) {
    untilStopped(it -> Pages.open(source, it), port, results);
  }

  /**
   * The same with pages on which the documents of a store are worked on. The store is closed after
   * them.
   */
  static void untilStopped(
      Store store, String where, Example example, int port, PrintWriter results) {
    try (store) {
      untilStopped(it -> Pages.open(store, where, example, it), port, results);
    }
  }

  private static void untilStopped(Opener opener, int port, PrintWriter results) {
    check(port);
    try (Pages pages = opener.at(port)) {
      // On Ctrl-C nothing after the wait is reached.
      Thread onExit = new Thread(pages::close, "close pages");
      Runtime.getRuntime().addShutdownHook(onExit);
      results.println("The pages are open at " + pages.address() + " (Ctrl-C stops them).");
      results.flush();
      try {
        new CountDownLatch(1).await();
      } catch (InterruptedException stopped) {
        Runtime.getRuntime().removeShutdownHook(onExit);
      }
    } catch (PortTakenException taken) {
      throw new WrongInput("--port: " + taken.getMessage() + ".");
    }
  }
}
