package org.loomwright.web;

import io.javalin.Javalin;
import java.net.BindException;
import org.loomwright.store.Store;
import org.loomwright.web.shop.Example;
import org.loomwright.web.shop.Href;
import org.loomwright.web.shop.Shop;
import org.loomwright.web.shop.ShopSource;
import org.loomwright.web.shop.Workbench;

/** The pages of one workspace, open on this computer only, until they are stopped. */
public final class Pages implements AutoCloseable {
  private static final String LOOPBACK = "127.0.0.1";

  private final Javalin server;
  private final Workbench bench;

  private Pages(Javalin server, Workbench bench) {
    this.server = server;
    this.bench = bench;
  }

  /**
   * Opens pages that show documents and change nothing.
   *
   * @param source the documents
   * @param port port to listen on, 0 to 65535; 0 for any that is free
   * @throws PortTakenException when another program listens there
   */
  public static Pages open(ShopSource source, int port) throws PortTakenException {
    return open(Workbench.reading(source), port);
  }

  /**
   * Opens pages on which the documents of a store are worked on.
   *
   * @param store the store; it has to stay open as long as the pages
   * @param where where that is, in words
   * @param example what an empty store can be filled with
   * @param port port to listen on, 0 to 65535; 0 for any that is free
   * @throws PortTakenException when another program listens there
   */
  public static Pages open(Store store, String where, Example example, int port)
      throws PortTakenException {
    return open(Workbench.on(store, where, example), port);
  }

  /** Opens the pages for this computer only, and begins to plan the kits. */
  private static Pages open(Workbench bench, int port) throws PortTakenException {
    Javalin server = Site.of(bench);
    try {
      server.start(LOOPBACK, port);
    } catch (RuntimeException failure) {
      bench.close();
      if (isTaken(failure)) {
        throw new PortTakenException(port);
      }
      throw failure;
    }
    Shop shop = bench.now();
    shop.workspace()
        .kits()
        .forEach(kit -> shop.order(Href.part(kit.id())).ifPresent(bench.desk()::of));
    return new Pages(server, bench);
  }

  private static boolean isTaken(Throwable failure) {
    for (Throwable it = failure; it != null; it = it.getCause()) {
      if (it instanceof BindException
          || String.valueOf(it.getMessage()).contains("Port already in use")) {
        return true;
      }
    }
    return false;
  }

  /** Port they listen on. */
  public int port() {
    return server.port();
  }

  /** Address of the first page. */
  public String address() {
    return "http://" + LOOPBACK + ":" + port() + "/";
  }

  /** Stops; answers under way get some seconds to end. */
  @Override
  public void close() {
    server.stop();
    bench.close();
  }
}
