package org.loomwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.loomwright.model.finding.Finding;
import org.loomwright.papers.words.Names;
import org.loomwright.store.Revision;
import org.loomwright.store.Store;
import org.loomwright.store.Version;
import org.loomwright.web.shop.Href;
import org.loomwright.web.shop.ImpactDesk;
import org.loomwright.web.shop.PlanDesk;
import org.loomwright.web.shop.Planned;
import org.loomwright.web.shop.Shop;
import org.loomwright.web.shop.VehicleChange;
import org.loomwright.web.shop.Workbench;
import org.loomwright.web.view.FindingView;
import org.loomwright.web.view.HistoryView;

/** Which kits are touched by what was found on their vehicle, and how. */
public final class ImpactRoutes implements Routes {
  private final Workbench bench;
  private final PageWriter writer;

  ImpactRoutes(Workbench bench, PageWriter writer) {
    this.bench = bench;
    this.writer = writer;
  }

  /**
   * What is compared.
   *
   * @param history revisions of the vehicle, newest first
   * @param from the revision before the change
   * @param to the newest revision
   * @param differences what differs in the document, in words
   * @param names names for the words of each kit, as far as it is planned
   */
  public record Compared(
      List<Revision> history,
      long from,
      long to,
      List<String> differences,
      Map<String, Names> names) {
    public Compared {
      history = List.copyOf(history);
      differences = List.copyOf(differences);
      names = Map.copyOf(names);
    }

    /** Words of a change with the names that are known. */
    public String prose(String kit, String words) {
      return Optional.ofNullable(names.get(kit)).map(it -> it.prose(words)).orElse(words);
    }
  }

  @Override
  public void add(RoutesConfig routes) {
    if (bench.store().isPresent()) {
      routes.get("/findings/{id}/impact", this::show);
      routes.post("/findings/{id}/impact/stop", ctx -> desk(ctx, ImpactDesk::stop));
      routes.post("/findings/{id}/impact/again", ctx -> desk(ctx, ImpactDesk::again));
    }
  }

  private Store store() {
    return bench.store().orElseThrow(() -> new IllegalStateException("pages without a store"));
  }

  private void show(Context ctx) {
    Shop shop = bench.now();
    Optional<Finding> finding = shop.finding(ctx.pathParam("id"));
    List<Revision> history =
        finding.map(it -> store().documents().history(VehicleChange.vehicle(it))).orElse(List.of());
    if (finding.isEmpty() || history.isEmpty()) {
      writer.nothing(ctx, "finding");
      return;
    }
    long to = history.get(0).number();
    String asked = String.valueOf(ctx.queryParam("from"));
    long from =
        history.stream()
            .map(Revision::number)
            .filter(it -> Long.toString(it).equals(asked))
            .findFirst()
            .orElseGet(() -> VehicleChange.from(store(), finding.get(), history));
    Optional<Version> older = version(history, from);
    Optional<Version> newest = version(history, to);
    if (older.isEmpty() || newest.isEmpty()) {
      writer.nothing(ctx, "revision of the vehicle");
      return;
    }
    Optional<ImpactDesk.Answer> answer =
        from == to ? Optional.empty() : Optional.of(answer(older.get()));
    Compared compared =
        new Compared(
            history,
            from,
            to,
            HistoryView.differences(older.get(), newest.get()),
            answer.filter(ImpactDesk.Known.class::isInstance).isPresent()
                ? names(shop, finding.get())
                : Map.of());
    Map<String, Object> things = new LinkedHashMap<>();
    things.put("view", FindingView.of(shop, finding.get()));
    things.put("compared", compared);
    things.put("answer", answer);
    things.put("workspace", shop.workspace());
    writer.show(ctx, shop, "Kits touched: " + finding.get().name(), "impact.jte", things);
  }

  private Optional<Version> version(List<Revision> history, long number) {
    return store().documents().version(history.get(0).key(), number);
  }

  private ImpactDesk.Answer answer(Version older) {
    Store store = store();
    Revision revision = older.revision();
    return bench
        .impacts()
        .soon(
            new ImpactDesk.Question(revision.key().id(), revision.number()),
            VehicleChange.state(store),
            () -> VehicleChange.documents(store, older),
            PlanDesk.PATIENCE);
  }

  /** Names for the words of kits that are planned as they are now. */
  private Map<String, Names> names(Shop shop, Finding finding) {
    Map<String, Names> names = new LinkedHashMap<>();
    shop.vehicle(Href.part(finding.vehicle())).stream()
        .flatMap(it -> shop.kitsOn(it).stream())
        .flatMap(it -> shop.order(Href.part(it.id())).stream())
        .forEach(
            order -> {
              if (bench.desk().of(order) instanceof Planned.Done done) {
                names.put(order.kit().id(), done.pages().names());
              }
            });
    return names;
  }

  private void desk(Context ctx, BiConsumer<ImpactDesk, ImpactDesk.Question> what) {
    Optional<Finding> finding = bench.now().finding(ctx.pathParam("id"));
    if (finding.isEmpty()) {
      writer.nothing(ctx, "finding");
      return;
    }
    what.accept(
        bench.impacts(),
        new ImpactDesk.Question(finding.get().vehicle(), PageWriter.number(ctx, "from")));
    ctx.redirect(Back.of(ctx), HttpStatus.SEE_OTHER);
  }
}
