package org.loomwright.cli.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.cli.shell.WrongInput;
import org.loomwright.store.Store;

/** Where the store is when nobody says so, and when somebody does. */
class PlaceTest {
  @TempDir Path home;

  private Path file(String system, Map<String, String> environment) {
    return Path.of(Place.of(Optional.empty(), environment, system, home).shown());
  }

  @Test
  void eachSystemHasItsOwnFolderForData() {
    Path data = home.resolve("data");
    assertThat(file("Linux", Map.of())).isEqualTo(home.resolve(".local/share/loomwright/shop.db"));
    assertThat(file("FreeBSD", Map.of("XDG_DATA_HOME", data.toString())))
        .isEqualTo(data.resolve("loomwright/shop.db"));
    assertThat(file("Linux", Map.of("XDG_DATA_HOME", "not/absolute")))
        .isEqualTo(home.resolve(".local/share/loomwright/shop.db"));
    assertThat(file("Mac OS X", Map.of()))
        .isEqualTo(home.resolve("Library/Application Support/Loomwright/shop.db"));
    assertThat(file("Windows 11", Map.of("LOCALAPPDATA", data.toString())))
        .isEqualTo(data.resolve("Loomwright/shop.db"));
    assertThat(file("Windows 11", Map.of()))
        .isEqualTo(home.resolve("AppData/Local/Loomwright/shop.db"));
  }

  @Test
  void whatIsNamedComesFirst() {
    Map<String, String> environment = Map.of(Place.VARIABLE, home.resolve("b.db").toString());
    assertThat(file("Linux", environment)).isEqualTo(home.resolve("b.db"));
    assertThat(file("Linux", Map.of(Place.VARIABLE, " ")))
        .isEqualTo(home.resolve(".local/share/loomwright/shop.db"));
    String named = home.resolve("a.db").toString();
    assertThat(Place.of(Optional.of(named), environment, "Linux", home).shown()).isEqualTo(named);
    assertThatThrownBy(() -> file("Linux", Map.of(Place.VARIABLE, "jdbc:other:x")))
        .isInstanceOf(WrongInput.class)
        .hasMessageStartingWith("LOOMWRIGHT_DB: 'jdbc:other:x' is no place for a store")
        .hasMessageEndingWith(".");
  }

  @Test
  void onlyTheUsualFolderIsMade() throws IOException {
    Place usual = Place.of(Optional.empty(), Map.of(), "Linux", home);
    assertThatThrownBy(usual::openExisting)
        .isInstanceOf(WrongInput.class)
        .hasMessageStartingWith("There is no store at " + usual.shown());
    assertThat(home).isEmptyDirectory();
    try (Store store = usual.open()) {
      assertThat(store.state()).isZero();
    }
    try (Store store = usual.openExisting()) {
      assertThat(store.state()).isZero();
    }
    Place named =
        Place.of(Optional.of(home.resolve("none/shop.db").toString()), Map.of(), "Linux", home);
    assertThatThrownBy(named::open).hasMessageContaining("there is no folder");
    Path file = Files.createFile(home.resolve("file"));
    Place blocked =
        Place.of(Optional.empty(), Map.of("XDG_DATA_HOME", file.toString()), "Linux", home);
    assertThatThrownBy(blocked::open)
        .isInstanceOf(WrongInput.class)
        .hasMessageStartingWith(
            "The folder " + file.resolve("loomwright") + " for the store can't");
  }
}
