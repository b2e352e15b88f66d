package org.loomwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.finding.Finding;
import org.loomwright.model.finding.FindingState;
import org.loomwright.model.json.DocumentKind;
import org.loomwright.model.json.JsonText;
import org.loomwright.model.workspace.Problem;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Version;
import org.loomwright.web.shop.Href;
import org.loomwright.web.shop.Shop;
import org.loomwright.web.shop.Workbench;
import org.loomwright.web.view.FindingView;
import tools.jackson.databind.node.ObjectNode;

/** What was seen on real vehicles: the list, one of them, and what becomes of it. */
public final class FindingRoutes implements Routes {
  private static final String OUTCOME = "outcome";
  private static final String TAKEN = "takenInto";

  private final Workbench bench;
  private final PageWriter writer;
  private final Saver saver;

  FindingRoutes(Workbench bench, PageWriter writer, Saver saver) {
    this.bench = bench;
    this.writer = writer;
    this.saver = saver;
  }

  /**
   * What the list is cut down to; empty texts for nothing.
   *
   * @param vehicle id of a vehicle
   * @param on id of a connector or fuse block
   * @param state state, as documents write it
   */
  public record Filter(String vehicle, String on, String state) {
    private boolean takes(FindingView it) {
      return (vehicle.isEmpty() || it.finding().vehicle().equals(vehicle))
          && (on.isEmpty() || it.isOn(on))
          && (state.isEmpty() || word(it.finding().state()).equals(state));
    }

    /** A state as documents write it. */
    public static String word(FindingState state) {
      return state.words().replace(' ', '-');
    }
  }

  /**
   * What was typed into the form that decides on a finding.
   *
   * @param outcome what was done
   * @param takenInto revision of the vehicle
   * @param problems why it was not saved, by field; "" for what has none
   */
  public record Typed(String outcome, String takenInto, Map<String, String> problems) {
    /** What is wrong with a field; empty when nothing is. */
    public String wrong(String field) {
      return problems.getOrDefault(field, "");
    }
  }

  @Override
  public void add(RoutesConfig routes) {
    routes.get("/findings", this::list);
    routes.get("/finding/{id}", this::show);
    if (bench.store().isPresent()) {
      routes.post("/finding/{id}/decide", this::decide);
    }
  }

  private void list(Context ctx) {
    Shop shop = bench.now();
    Map<String, String> asked = PageWriter.asked(ctx);
    Filter filter =
        new Filter(
            asked.getOrDefault("vehicle", ""),
            asked.getOrDefault("on", ""),
            asked.getOrDefault("state", ""));
    List<FindingView> all = FindingView.all(shop);
    writer.show(
        ctx,
        shop,
        "Findings",
        "findings.jte",
        Map.of(
            "vehicles",
            shop.workspace().vehicles(),
            "filter",
            filter,
            "all",
            all.size(),
            "findings",
            all.stream().filter(filter::takes).toList()));
  }

  private void show(Context ctx) {
    Shop shop = bench.now();
    Optional<Finding> finding = shop.finding(ctx.pathParam("id"));
    if (finding.isEmpty()) {
      writer.nothing(ctx, "finding");
      return;
    }
    Finding it = finding.get();
    page(ctx, shop, it, bench.number(it), typed(it.outcome().orElse(""), "", List.of()));
  }

  private void page(Context ctx, Shop shop, Finding finding, long basedOn, Typed typed) {
    writer.show(
        ctx,
        shop,
        finding.name(),
        "finding.jte",
        Map.of("view", FindingView.of(shop, finding), "basedOn", basedOn, "typed", typed));
  }

  private static Typed typed(String outcome, String takenInto, List<Problem> problems) {
    Map<String, String> wrong = new LinkedHashMap<>();
    for (Problem it : problems) {
      boolean field = List.of(OUTCOME, TAKEN, Saver.WHO).contains(it.path());
      wrong.merge(
          field ? it.path() : "", field ? it.message() : it.words(), (a, b) -> a + "; " + b);
    }
    return new Typed(outcome, takenInto, wrong);
  }

  private void decide(Context ctx) {
    Shop shop = bench.now();
    Optional<Finding> finding = shop.finding(ctx.pathParam("id"));
    String word = Optional.ofNullable(ctx.formParam("state")).orElse("");
    Optional<FindingState> state =
        List.of(FindingState.values()).stream()
            .filter(it -> Filter.word(it).equals(word))
            .findFirst();
    long basedOn = PageWriter.number(ctx, "basedOn");
    Optional<Version> base =
        finding.flatMap(
            it ->
                saver
                    .store()
                    .documents()
                    .version(new DocumentKey(DocumentKind.FINDING.word(), it.id()), basedOn));
    if (base.isEmpty() || state.isEmpty()) {
      writer.nothing(ctx, "finding");
      return;
    }
    String outcome = said(ctx, OUTCOME);
    String taken = said(ctx, TAKEN);
    String text = with(base.get().content(), state.get(), outcome, taken);
    String back = Href.finding(finding.get().id());
    List<Problem> problems = saver.save(ctx, base.get().revision().key(), text, basedOn, back);
    if (!problems.isEmpty()) {
      ctx.status(HttpStatus.UNPROCESSABLE_CONTENT);
      page(ctx, shop, finding.get(), basedOn, typed(outcome, taken, problems));
    }
  }

  private static String said(Context ctx, String field) {
    return Optional.ofNullable(ctx.formParam(field)).orElse("").strip();
  }

  /** The text of a finding with what became of it. One that is opened again keeps its outcome. */
  private static String with(String text, FindingState state, String outcome, String taken) {
    if (!(JsonText.parse(text) instanceof JsonText.Tree tree
        && tree.node() instanceof ObjectNode finding)) {
      return text;
    }
    finding.put("state", Filter.word(state));
    if (state != FindingState.OPEN) {
      set(finding, OUTCOME, outcome);
    }
    set(finding, TAKEN, state == FindingState.ACCEPTED ? taken : "");
    return finding.toPrettyString() + "\n";
  }

  private static void set(ObjectNode finding, String key, String text) {
    if (text.isEmpty()) {
      finding.remove(key);
    } else {
      finding.put(key, text);
    }
  }
}
