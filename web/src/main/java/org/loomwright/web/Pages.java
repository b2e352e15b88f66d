package org.loomwright.web;

import io.javalin.Javalin;
import java.net.BindException;
import org.loomwright.web.shop.Href;
import org.loomwright.web.shop.PlanDesk;
import org.loomwright.web.shop.Shop;
import org.loomwright.web.shop.ShopSource;

/** The pages of one workspace, open on this computer until they are stopped. */
public final class Pages implements AutoCloseable {
  private static final String LOOPBACK = "127.0.0.1";

  private final Javalin server;
  private final PlanDesk desk;

  private Pages(Javalin server, PlanDesk desk) {
    this.server = server;
    this.desk = desk;
  }

  /**
   * Opens the pages for this computer only, and begins to plan the kits.
   *
   * @param source the documents
   * @param port port to listen on, 0 to 65535; 0 for any that is free
   * @throws PortTakenException when another program listens there
   */
  public static Pages open(ShopSource source, int port) throws PortTakenException {
    PlanDesk desk = new PlanDesk();
    Shop.Reader reader = new Shop.Reader(source);
    Javalin server = Site.of(reader, desk);
    try {
      server.start(LOOPBACK, port);
    } catch (RuntimeException failure) {
      desk.close();
      if (isTaken(failure)) {
        throw new PortTakenException(port);
      }
      throw failure;
    }
    Shop shop = reader.now();
    shop.workspace().kits().forEach(kit -> shop.order(Href.part(kit.id())).ifPresent(desk::of));
    return new Pages(server, desk);
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
    desk.close();
  }
}
