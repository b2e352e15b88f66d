package org.loomwright.cli.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.loomwright.cli.shell.WrongInput;
import org.loomwright.store.Store;
import org.loomwright.store.StoreException;
import org.loomwright.store.StoreTarget;

/**
 * Where the store is: what {@code --db} names, else what the environment variable {@value
 * #VARIABLE} names, else the file {@code shop.db} in the folder that the system gives each person
 * for the data of programs. Only that folder is made when it is not there; a place that someone
 * named has to exist.
 */
public final class Place {
  /** Environment variable that names the store for all commands. */
  public static final String VARIABLE = "LOOMWRIGHT_DB";

  private static final String FILE = "shop.db";

  private final StoreTarget target;
  private final boolean usual;

  private Place(StoreTarget target, boolean usual) {
    this.target = target;
    this.usual = usual;
  }

  /**
   * The place on this machine.
   *
   * @param named what {@code --db} says
   * @throws WrongInput when a name is neither a file nor an address
   */
  public static Place of(Optional<String> named) {
    return of(
        named,
        System.getenv(),
        System.getProperty("os.name", ""),
        Path.of(System.getProperty("user.home", "")));
  }

  /**
   * The place on any machine.
   *
   * @param environment variables of the environment
   * @param system name of the operating system
   * @param home home folder of the person
   */
  static Place of(
      Optional<String> named, Map<String, String> environment, String system, Path home) {
    if (named.isPresent()) {
      return new Place(parse("--db", named.get()), false);
    }
    String variable = environment.getOrDefault(VARIABLE, "");
    if (!variable.isBlank()) {
      return new Place(parse(VARIABLE, variable), false);
    }
    Path folder = dataFolder(environment, system.toLowerCase(Locale.ROOT), home);
    return new Place(new StoreTarget.SqliteFile(folder.resolve(FILE)), true);
  }

  private static StoreTarget parse(String what, String text) {
    try {
      return StoreTarget.parse(text);
    } catch (StoreException wrong) {
      throw new WrongInput(what + ": " + wrong.getMessage() + ".");
    }
  }

  /** On Linux and the like as the XDG Base Directory Specification says. */
  private static Path dataFolder(Map<String, String> environment, String system, Path home) {
    if (system.startsWith("windows")) {
      String local = environment.getOrDefault("LOCALAPPDATA", "");
      Path data = local.isBlank() ? home.resolve("AppData").resolve("Local") : Path.of(local);
      return data.resolve("Loomwright");
    }
    if (system.startsWith("mac")) {
      return home.resolve("Library").resolve("Application Support").resolve("Loomwright");
    }
    String data = environment.getOrDefault("XDG_DATA_HOME", "");
    // The specification wants paths that are not absolute to be passed over.
    Path folder =
        data.isBlank() || !Path.of(data).isAbsolute()
            ? home.resolve(".local").resolve("share")
            : Path.of(data);
    return folder.resolve("loomwright");
  }

  /** The place itself. */
  public StoreTarget target() {
    return target;
  }

  /** Its name for messages, without secrets. */
  public String shown() {
    return target.shown();
  }

  /**
   * The place, its folder made where it is the usual one.
   *
   * @throws WrongInput when the folder can't be made
   */
  StoreTarget ready() {
    if (usual && target instanceof StoreTarget.SqliteFile sqlite) {
      Path folder = sqlite.file().toAbsolutePath().getParent();
      try {
        Files.createDirectories(folder);
      } catch (IOException failure) {
        throw new WrongInput(
            "The folder "
                + folder
                + " for the store can't be made ("
                + failure
                + "); allow it, or name another place with --db.");
      }
    }
    return target;
  }

  /**
   * Opens the store and makes it when it is not there.
   *
   * @throws WrongInput or {@link StoreException} when it can't be opened
   */
  public Store open() {
    return Store.open(ready());
  }

  /**
   * Opens a store that has to be there: reading makes none.
   *
   * @throws WrongInput or {@link StoreException} when it is not there or can't be opened
   */
  public Store openExisting() {
    if (target instanceof StoreTarget.SqliteFile sqlite && !Files.exists(sqlite.file())) {
      throw new WrongInput(
          "There is no store at "
              + shown()
              + "; loomwright import makes one, and --db names another place.");
    }
    return Store.open(target);
  }
}
