package org.loomwright.cli.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.cli.Main;
import org.loomwright.cli.Run;

class ServeCommandTest {
  private static final Pattern ADDRESS = Pattern.compile("open at (http://127[.]0[.]0[.]1:\\d+/)");

  @TempDir Path temp;

  /** A command that keeps pages open, in a thread of its own. */
  record Started(String address, Thread thread, CompletableFuture<Integer> exitCode) {
    int stop() throws Exception {
      thread.interrupt();
      return exitCode.get(60, TimeUnit.SECONDS);
    }
  }

  static Started start(String... words) throws Exception {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    CompletableFuture<Integer> exitCode = new CompletableFuture<>();
    Thread thread =
        new Thread(
            () -> exitCode.complete(Main.run(new PrintWriter(out), new PrintWriter(err), words)));
    thread.start();
    for (int i = 0; i < 1800 && !exitCode.isDone(); i++) {
      Matcher address = ADDRESS.matcher(out.toString());
      if (address.find()) {
        return new Started(address.group(1), thread, exitCode);
      }
      Thread.sleep(100);
    }
    throw new AssertionError("no pages were opened: " + out + err);
  }

  static String get(String address) throws IOException, InterruptedException {
    HttpResponse<String> answer =
        HttpClient.newHttpClient()
            .send(
                HttpRequest.newBuilder(URI.create(address)).build(),
                HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
    assertThat(answer.statusCode()).as(address).isEqualTo(200);
    return answer.body();
  }

  @Test
  void opensAStoreThatKeepsWhatWasDone() throws Exception {
    String shop = temp.resolve("shop.db").toString();
    Started serve = start("serve", "--db", shop, "--port", "0");
    assertThat(get(serve.address())).contains("Begin with the demo");
    HttpResponse<String> begun =
        HttpClient.newHttpClient()
            .send(
                HttpRequest.newBuilder(URI.create(serve.address() + "begin"))
                    .POST(HttpRequest.BodyPublishers.noBody())
                    .build(),
                HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
    assertThat(begun.statusCode()).isEqualTo(303);
    assertThat(get(serve.address())).contains("13-pin trailer socket");
    assertThat(serve.stop()).isZero();
    serve = start("serve", "--db", shop, "--port", "0");
    assertThat(get(serve.address())).contains("13-pin trailer socket");
    assertThat(serve.stop()).isZero();
  }

  @Test
  void aFolderAndAStoreAtOnceAreRefused() {
    Run run = Run.of("serve", temp.toString(), "--db", temp.resolve("x.db").toString());
    assertThat(run.exitCode()).isEqualTo(3);
    assertThat(run.err()).contains("either a store or a folder");
  }

  @Test
  void showsWhatIsWrongWithAFolderAndWhatWasPutRight() throws Exception {
    Path file = Files.writeString(temp.resolve("x.kit.json"), "{ broken");
    Started serve = start("serve", temp.toString(), "--port", "0");
    assertThat(get(serve.address())).contains("Not readable yet").contains("x.kit.json");
    Files.delete(file);
    DemoCopy.in(temp);
    assertThat(get(serve.address())).contains("13-pin trailer socket");
    assertThat(serve.stop()).isZero();
  }

  @Test
  void aTakenPortIsSaid() throws IOException {
    try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
      Run run =
          Run.of(
              "serve",
              "--db",
              temp.resolve("shop.db").toString(),
              "--port",
              Integer.toString(taken.getLocalPort()));
      assertThat(run.exitCode()).isEqualTo(3);
      assertThat(run.err())
          .contains("--port: port " + taken.getLocalPort() + " is taken by another program");
      assertThat(run.out()).isEmpty();
    }
  }

  @Test
  void wrongFoldersAndPortsAreSaid() throws IOException {
    assertThat(Run.of("serve", temp.resolve("none").toString()).err())
        .contains("there is no such folder");
    Path file = Files.writeString(temp.resolve("file"), "");
    assertThat(Run.of("serve", file.toString()).err()).contains("is a file");
    Run port = Run.of("serve", "--port", "70000");
    assertThat(port.exitCode()).isEqualTo(3);
    assertThat(port.err()).contains("there is no port 70000");
    assertThat(Run.of("demo", "--port", "-1").exitCode()).isEqualTo(3);
  }

  /** As a shell does it: a signal to the process. */
  @Test
  void stopsWhenItIsToldTo() throws Exception {
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                "org.loomwright.cli.Main",
                "serve",
                "--db",
                temp.resolve("shop.db").toString(),
                "--port",
                "0")
            .redirectErrorStream(true)
            .start();
    try (BufferedReader reader =
        new BufferedReader(
            new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
      Matcher address = ADDRESS.matcher(String.valueOf(reader.readLine()));
      assertThat(address.find()).isTrue();
      assertThat(get(address.group(1))).contains("Welcome");
      // Not destroy(), which would close what the process still says.
      process.toHandle().destroy();
      assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
      assertThat(reader.readLine()).as("nothing more is printed").isNull();
    } finally {
      process.destroyForcibly();
    }
  }
}
