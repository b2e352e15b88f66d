package org.loomwright.cli.shell;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.loomwright.physics.SumException;
import org.loomwright.store.StoreException;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** Turns whatever goes wrong into one plain message and an {@link ExitCode}. */
public final class Failures implements IParameterExceptionHandler, IExecutionExceptionHandler {

  private final BooleanSupplier detailsAsked;

  /**
   * Handles failures of one command line.
   *
   * @param detailsAsked whether the user wants to see the details of an internal fault
   */
  public Failures(BooleanSupplier detailsAsked) {
    this.detailsAsked = detailsAsked;
  }

  @Override
  public int handleParseException(ParameterException failure, String[] args) {
    CommandLine line = failure.getCommandLine();
    PrintWriter err = line.getErr();
    if (failure.getCause() instanceof WrongInput wrong) {
      err.println(Values.describe(failure, wrong));
      return ExitCode.WRONG_INPUT;
    }
    Optional<String> unknown = unknownOption(line.getCommandSpec(), args);
    if (failure instanceof MissingParameterException && unknown.isPresent()) {
      // A misspelt option is the likely reason why the right one is missing.
      return handleParseException(
          new UnmatchedArgumentException(line, List.of(unknown.get())), args);
    }
    err.println(
        failure instanceof UnmatchedArgumentException unmatched && !unmatched.isUnknownOption()
            ? "\"" + unmatched.getUnmatched().get(0) + "\" is not understood here."
            : failure.getMessage());
    UnmatchedArgumentException.printSuggestions(failure, err);
    err.println("Try: " + line.getCommandSpec().qualifiedName() + " --help");
    return ExitCode.WRONG_USAGE;
  }

  @Override
  public int handleExecutionException(Exception failure, CommandLine line, ParseResult parsed) {
    PrintWriter err = line.getErr();
    if (failure instanceof WrongInput || failure instanceof SumException) {
      err.println(failure.getMessage());
      return ExitCode.WRONG_INPUT;
    }
    if (failure instanceof StoreException) {
      err.println(failure.getMessage() + ".");
      return ExitCode.WRONG_INPUT;
    }
    return internalFault(failure, err);
  }

  /**
   * Says in one sentence that the program itself is at fault, without a stack trace unless asked.
   *
   * @return {@link ExitCode#INTERNAL_FAULT}
   */
  public int internalFault(Throwable failure, PrintWriter err) {
    err.println(
        "Loomwright stopped because of a fault of its own ("
            + failure.getClass().getSimpleName()
            + "). Please report it with the command you typed; CONTRIBUTING.md says how.");
    if (detailsAsked.getAsBoolean()) {
      failure.printStackTrace(err);
    } else {
      err.println("Add --debug to see the details.");
    }
    return ExitCode.INTERNAL_FAULT;
  }

  private static Optional<String> unknownOption(CommandSpec spec, String[] args) {
    return Arrays.stream(args)
        .filter(word -> word.startsWith("--"))
        .map(word -> word.replaceFirst("=.*", ""))
        .filter(name -> !spec.optionsMap().containsKey(name))
        .findFirst();
  }
}
