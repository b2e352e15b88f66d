package org.loomwright.cli.shell;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;
import org.loomwright.physics.SumException;
import org.loomwright.store.StoreException;
import picocli.CommandLine;
import picocli.CommandLine.Command;

class FailuresTest {

  @Test
  void anInternalFaultIsOneSentenceAndNoStackTrace() {
    Said said = run(new IllegalStateException("planted"), false);
    assertThat(said.exitCode()).isEqualTo(ExitCode.INTERNAL_FAULT);
    assertThat(said.err())
        .startsWith("Loomwright stopped because of a fault of its own (IllegalStateException).")
        .contains("CONTRIBUTING.md", "--debug")
        .doesNotContain("\tat ", "planted");
  }

  @Test
  void itsDetailsAreShownOnRequest() {
    assertThat(run(new IllegalStateException("planted"), true).err()).contains("planted", "\tat ");
  }

  @Test
  void wrongInputIsItsMessageAlone() {
    Said said = run(new WrongInput("The file is missing."), false);
    assertThat(said.exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(said.err()).isEqualToIgnoringNewLines("The file is missing.");
  }

  @Test
  void aSumThatCannotBeDoneIsWrongInput() {
    Said said = run(new SumException("current must be above zero"), false);
    assertThat(said.exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(said.err()).isEqualToIgnoringNewLines("current must be above zero");
  }

  @Test
  void whatTheStoreCannotDoIsItsMessageAlone() {
    Said said = run(new StoreException("shop.db: there is no room left"), false);
    assertThat(said.exitCode()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(said.err()).isEqualToIgnoringNewLines("shop.db: there is no room left.");
  }

  private record Said(int exitCode, String err) {}

  private static Said run(RuntimeException planted, boolean debug) {
    StringWriter err = new StringWriter();
    int exitCode =
        new CommandLine(new Planted(planted))
            .setErr(new PrintWriter(err, true))
            .setExecutionExceptionHandler(new Failures(() -> debug))
            .execute();
    return new Said(exitCode, err.toString());
  }

  /** A command that always goes wrong. */
  @Command(name = "planted")
  private static final class Planted implements Runnable {

    private final RuntimeException fault;

    Planted(RuntimeException fault) {
      this.fault = fault;
    }

    @Override
    public void run() {
      throw fault;
    }
  }
}
