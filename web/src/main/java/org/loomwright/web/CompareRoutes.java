package org.loomwright.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.workspace.KitOrders;
import org.loomwright.model.workspace.NamedText;
import org.loomwright.model.workspace.Read;
import org.loomwright.model.workspace.WorkspaceReader;
import org.loomwright.papers.words.Names;
import org.loomwright.planner.difference.Change;
import org.loomwright.planner.difference.PlanDifference;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Version;
import org.loomwright.store.WorkspaceContent;
import org.loomwright.web.shop.PlanDesk;
import org.loomwright.web.shop.Planned;
import org.loomwright.web.shop.Workbench;
import org.loomwright.web.view.HistoryView;

/** Two revisions of a document beside each other; of a kit, their plans too. */
public final class CompareRoutes implements Routes {
  private final Workbench bench;
  private final PageWriter writer;
  private final Saver saver;

  CompareRoutes(Workbench bench, PageWriter writer, Saver saver) {
    this.bench = bench;
    this.writer = writer;
    this.saver = saver;
  }

  /**
   * What the page shows.
   *
   * @param key the document
   * @param from number of the one revision
   * @param to number of the other
   * @param differences what differs in the texts, in words
   * @param waiting whether plans are still being made
   * @param failure why there are no plans; empty when there are
   * @param changes what differs in the plans
   * @param names names for their words
   */
  public record Compared(
      DocumentKey key,
      long from,
      long to,
      List<String> differences,
      boolean waiting,
      String failure,
      List<Change> changes,
      Optional<Names> names) {
    public Compared {
      differences = List.copyOf(differences);
      changes = List.copyOf(changes);
    }
  }

  @Override
  public void add(RoutesConfig routes) {
    if (bench.store().isPresent()) {
      routes.get("/compare/{kind}/{id}", this::compare);
    }
  }

  private void compare(Context ctx) {
    Optional<DocumentKey> key = Done.key(saver.store(), ctx.pathParam("kind"), ctx.pathParam("id"));
    Optional<Version> from = key.flatMap(it -> version(it, ctx.queryParam("from")));
    Optional<Version> to = key.flatMap(it -> version(it, ctx.queryParam("to")));
    if (from.isEmpty() || to.isEmpty()) {
      writer.nothing(ctx, "pair of revisions");
      return;
    }
    writer.show(
        ctx,
        bench.now(),
        "Two revisions of " + key.get().shown(),
        "compare.jte",
        Map.of("compared", compared(from.get(), to.get())));
  }

  private Optional<Version> version(DocumentKey key, @Nullable String number) {
    return number != null && number.matches("\\d{1,15}")
        ? saver.store().documents().version(key, Long.parseLong(number))
        : Optional.empty();
  }

  private Compared compared(Version from, Version to) {
    DocumentKey key = from.revision().key();
    long one = from.revision().number();
    long two = to.revision().number();
    List<String> differences = HistoryView.differences(from, to);
    if (!key.kind().equals("kit")) {
      return new Compared(key, one, two, differences, false, "", List.of(), Optional.empty());
    }
    Optional<KitOrder> before = order(from);
    Optional<KitOrder> after = order(to);
    if (before.isEmpty() || after.isEmpty()) {
      String failure =
          "Revision "
              + (before.isEmpty() ? one : two)
              + " does not fit the vehicle, equipment, parts and rules as they are now, so it can't"
              + " be planned.";
      return new Compared(key, one, two, differences, false, failure, List.of(), Optional.empty());
    }
    Planned first = bench.sides().get(0).soon(before.get(), PlanDesk.PATIENCE);
    Planned second = bench.sides().get(1).soon(after.get(), PlanDesk.PATIENCE);
    if (first instanceof Planned.Done a && second instanceof Planned.Done b) {
      List<Change> changes = PlanDifference.between(a.pages().plan(), b.pages().plan());
      return new Compared(
          key, one, two, differences, false, "", changes, Optional.of(b.pages().names()));
    }
    String failure =
        first instanceof Planned.Failed it
            ? it.why()
            : second instanceof Planned.Failed it2 ? it2.why() : "";
    return new Compared(
        key, one, two, differences, failure.isEmpty(), failure, List.of(), Optional.empty());
  }

  /** A revision of a kit with all else as it is now; empty when they do not fit. */
  private Optional<KitOrder> order(Version kit) {
    WorkspaceContent content = saver.store().workspaces().content();
    List<NamedText> texts = content.with(kit.revision().key(), kit.content());
    return WorkspaceReader.read(texts, content.pictures()) instanceof Read.Good good
            && KitOrders.resolve(good.workspace(), kit.revision().key().id())
                instanceof KitOrders.Found found
        ? Optional.of(found.order())
        : Optional.empty();
  }
}
