package org.loomwright.cli.store;

import java.util.Optional;
import org.loomwright.cli.shell.WrongInput;
import org.loomwright.store.Signature;
import picocli.CommandLine.Option;

/** The option {@code --by}: who signs what is saved. */
public final class SignOption {

  @Option(
      names = "--by",
      paramLabel = "NAME",
      description = "Who signs; without it the name you are logged in with.")
  private Optional<String> by;

  /**
   * The name.
   *
   * @throws WrongInput when there is none
   */
  public String name() {
    String name = by.orElseGet(() -> System.getProperty("user.name", "")).strip();
    if (name.isEmpty()) {
      throw new WrongInput("--by: the name is empty; say who signs, such as --by Anna.");
    }
    return name;
  }

  /** The signature with a reason. */
  public Signature signature(String why) {
    return new Signature(name(), why);
  }
}
