package org.loomwright.web.fit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Proof;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.workspace.KitOrders;
import org.loomwright.model.workspace.NamedText;
import org.loomwright.model.workspace.Read;
import org.loomwright.model.workspace.WorkspaceReader;
import org.loomwright.papers.fit.FitCheckPage;
import org.loomwright.planner.fit.FitCheck;
import org.loomwright.planner.fit.FitQuestion;
import org.loomwright.planner.plan.Planner;

/**
 * The fit check of a demo kit, perhaps changed, as a file.
 *
 * @param check the fit check
 * @param text the file's text
 */
record FitFile(FitCheck check, String text) {
  /** Of a kit as it is in the demo. */
  static FitFile of(String kit, int verifiedOn) {
    return of(kit, verifiedOn, UnaryOperator.identity());
  }

  /**
   * Of a kit whose van is changed first.
   *
   * @param change changes the JSON text of the van
   */
  static FitFile of(String kit, int verifiedOn, UnaryOperator<String> change) {
    KitOrder order = order(kit, change);
    Plan plan = Planner.plan(order);
    FitCheck check = FitCheck.of(order, plan);
    return new FitFile(check, FitCheckPage.text(order, plan, check, verifiedOn));
  }

  /** Of a kit whose proof is not that of its instructions. */
  static FitFile held(String kit) {
    KitOrder order = order(kit, UnaryOperator.identity());
    Plan plan = Planner.plan(order);
    Proof proof = plan.proof();
    Plan held =
        new Plan(
            plan.kit(),
            plan.builds(),
            plan.gap(),
            plan.fit(),
            plan.ways(),
            plan.cases(),
            plan.unserved(),
            plan.design(),
            plan.harness(),
            plan.checks(),
            plan.protections(),
            plan.networks(),
            plan.guide(),
            new Proof(
                proof.proven(),
                BigInteger.ONE,
                proof.obligations(),
                proof.leaves(),
                proof.counterexamples()),
            plan.notes());
    FitCheck check = FitCheck.of(order, held);
    return new FitFile(check, FitCheckPage.text(order, held, check, 0));
  }

  private static KitOrder order(String kit, UnaryOperator<String> change) {
    List<NamedText> texts = new ArrayList<>();
    // Tests run in the folder of their module.
    try (Stream<Path> files = Files.list(Path.of("..", "demo"))) {
      for (Path file : files.filter(it -> it.toString().endsWith(".json")).sorted().toList()) {
        String name = file.getFileName().toString();
        String text = Files.readString(file);
        texts.add(new NamedText(name, name.equals("van.vehicle.json") ? change.apply(text) : text));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Read read = WorkspaceReader.read(texts);
    if (read instanceof Read.Good good
        && KitOrders.resolve(good.workspace(), kit) instanceof KitOrders.Found found) {
      return found.order();
    }
    throw new IllegalStateException("the demo has no readable kit " + kit + ": " + read);
  }

  /** Writes it and gives its address. */
  String in(Path folder) {
    return write(folder, text);
  }

  static String write(Path folder, String text) {
    try {
      return Files.writeString(
              Files.createTempFile(folder, "fit-check", ".html"), text, StandardCharsets.US_ASCII)
          .toUri()
          .toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Every combination of answers, "I don't know" included. */
  List<Map<String, String>> combinations() {
    List<Map<String, String>> all = new ArrayList<>(List.of(Map.of()));
    for (FitQuestion question : check.questions()) {
      List<Map<String, String>> longer = new ArrayList<>(all);
      for (Map<String, String> answers : all) {
        for (FitQuestion.Option option : question.options()) {
          Map<String, String> more = new LinkedHashMap<>(answers);
          more.put(question.id(), option.value());
          longer.add(more);
        }
      }
      all = longer;
    }
    return all;
  }
}
