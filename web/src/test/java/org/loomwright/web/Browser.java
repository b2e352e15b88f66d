package org.loomwright.web;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;

/** Asks pages as a browser would, and follows no redirect by itself. */
final class Browser {
  private final HttpClient client =
      HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(10)).build();

  private final String address;

  Browser(Pages pages) {
    this.address = pages.address();
  }

  HttpResponse<String> get(String path, String... headers) {
    return send(request(path, headers).build());
  }

  HttpResponse<byte[]> bytes(String path, String... headers) {
    try {
      return client.send(request(path, headers).build(), HttpResponse.BodyHandlers.ofByteArray());
    } catch (IOException failure) {
      throw new AssertionError(path, failure);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new AssertionError(path, stopped);
    }
  }

  HttpResponse<String> post(String path, String form, String... headers) {
    return send(
        request(path, headers)
            .header("Content-Type", "application/x-www-form-urlencoded")
            .POST(HttpRequest.BodyPublishers.ofString(form))
            .build());
  }

  private HttpRequest.Builder request(String path, String... headers) {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create(address).resolve(path))
            .timeout(Duration.ofSeconds(120))
            // As browsers ask; a server may answer in another form to who does not.
            .header("Accept", "text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8");
    return headers.length == 0 ? request : request.headers(headers);
  }

  private HttpResponse<String> send(HttpRequest request) {
    try {
      return client.send(request, HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
    } catch (IOException failure) {
      throw new AssertionError(request.uri().toString(), failure);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new AssertionError(request.uri().toString(), stopped);
    }
  }

  /** The page of a kit's stage once the kit is planned. */
  String planned(String path) {
    for (int i = 0; i < 1200; i++) {
      String page = get(path).body();
      if (!page.contains("Being planned")) {
        return page;
      }
      pause();
    }
    throw new AssertionError(path + " was still being planned after two minutes");
  }

  private static void pause() {
    try {
      Thread.sleep(100);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new AssertionError(stopped);
    }
  }
}
