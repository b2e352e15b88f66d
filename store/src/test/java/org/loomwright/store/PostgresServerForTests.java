package org.loomwright.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assumptions;

/** A PostgreSQL server of this test run alone, on loopback; it ends with the run. */
final class PostgresServerForTests {
  private static final String USER = "workshop";
  private static Optional<PostgresServerForTests> running = Optional.empty();

  private final Path programs;
  private final Path folder;
  private final int port;

  private PostgresServerForTests(Path programs, Path folder, int port) {
    this.programs = programs;
    this.folder = folder;
    this.port = port;
  }

  /** Address of a new, empty database; without a server on this machine the test is not run. */
  static synchronized String freshDatabase() {
    if (running.isEmpty()) {
      Optional<Path> programs = programs();
      Assumptions.assumeTrue(
          programs.isPresent(),
          "NOT RUN on PostgreSQL: no server under /usr/lib/postgresql; install the package"
              + " postgresql");
      running = Optional.of(start(programs.orElseThrow()));
    }
    return running.get().create("shop" + Place.next());
  }

  private static Optional<Path> programs() {
    Path home = Path.of("/usr/lib/postgresql");
    if (!Files.isDirectory(home)) {
      return Optional.empty();
    }
    try (Stream<Path> versions = Files.list(home)) {
      return versions
          .map(it -> it.resolve("bin"))
          .filter(it -> Files.isExecutable(it.resolve("initdb")))
          .max(Comparator.comparing(Path::toString));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static PostgresServerForTests start(Path programs) {
    try (ServerSocket free = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      Path folder = Files.createTempDirectory("store-postgres");
      PostgresServerForTests server =
          new PostgresServerForTests(programs, folder, free.getLocalPort());
      free.close();
      if (isRoot()) {
        // The server refuses to run as root.
        server.run(List.of("chown", "postgres", folder.toString()));
      }
      Runtime.getRuntime().addShutdownHook(new Thread(server::stop));
      server.as(
          "initdb",
          "-D",
          server.data(),
          "-U",
          USER,
          "--auth=trust",
          "-E",
          "UTF8",
          "--locale=C.UTF-8",
          "--no-sync");
      server.as(
          "pg_ctl",
          "-D",
          server.data(),
          "-l",
          folder.resolve("log").toString(),
          "-w",
          "-o",
          "-c listen_addresses=127.0.0.1 -c fsync=off -c port="
              + server.port
              + " -c unix_socket_directories="
              + folder,
          "start");
      return server;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void stop() {
    as("pg_ctl", "-D", data(), "-m", "immediate", "-w", "stop");
    run(List.of("rm", "-rf", folder.toString()));
  }

  private String create(String database) {
    try (var connection = DriverManager.getConnection(url("postgres"));
        var statement = connection.createStatement()) {
      statement.execute("CREATE DATABASE " + database);
      return url(database);
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  private String url(String database) {
    return "jdbc:postgresql://127.0.0.1:" + port + "/" + database + "?user=" + USER;
  }

  private String data() {
    return folder.resolve("data").toString();
  }

  private static boolean isRoot() {
    return System.getProperty("user.name").equals("root");
  }

  private void as(String program, String... arguments) {
    List<String> command = new ArrayList<>();
    if (isRoot()) {
      command.addAll(List.of("setpriv", "--reuid=postgres", "--regid=postgres", "--clear-groups"));
    }
    command.add(programs.resolve(program).toString());
    command.addAll(List.of(arguments));
    run(command);
  }

  private void run(List<String> command) {
    try {
      Path log = Files.createTempFile("store-postgres", ".log");
      Process process =
          new ProcessBuilder(command)
              .directory(folder.toFile())
              .redirectErrorStream(true)
              .redirectOutput(log.toFile())
              .start();
      boolean ended = process.waitFor(60, TimeUnit.SECONDS);
      String said = Files.readString(log);
      Files.delete(log);
      if (!ended || process.exitValue() != 0) {
        process.destroyForcibly();
        throw new IllegalStateException(command + " failed: " + said);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }
}
