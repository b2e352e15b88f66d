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
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.workspace.Problem;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Draft;
import org.loomwright.store.SaveResult;
import org.loomwright.store.Signature;
import org.loomwright.store.Version;
import org.loomwright.web.found.IntoForm;
import org.loomwright.web.shop.Edits;
import org.loomwright.web.shop.Href;
import org.loomwright.web.shop.Shop;
import org.loomwright.web.shop.Workbench;
import org.loomwright.web.view.FindingView;
import tools.jackson.databind.node.ObjectNode;

/** Takes a finding into its vehicle, and accepts it with that. */
final class FindingIntoRoutes implements Routes {
  private final Workbench bench;
  private final PageWriter writer;
  private final Saver saver;

  FindingIntoRoutes(Workbench bench, PageWriter writer, Saver saver) {
    this.bench = bench;
    this.writer = writer;
    this.saver = saver;
  }

  /** What the form speaks of. */
  private record Subject(Shop shop, Finding finding, Vehicle vehicle) {}

  @Override
  public void add(RoutesConfig routes) {
    if (bench.store().isPresent()) {
      routes.get("/finding/{id}/into", this::show);
      routes.post("/finding/{id}/into", this::take);
    }
  }

  private Optional<Subject> subject(Context ctx) {
    Shop shop = bench.now();
    Optional<Subject> subject =
        shop.finding(ctx.pathParam("id"))
            .flatMap(
                finding ->
                    shop.vehicle(Href.part(finding.vehicle()))
                        .map(vehicle -> new Subject(shop, finding, vehicle)));
    if (subject.isEmpty()) {
      writer.nothing(ctx, "finding");
    } else if (!subject.get().finding().isOpen()) {
      writer.message(
          ctx,
          HttpStatus.CONFLICT,
          "Not open any more",
          "This finding is "
              + subject.get().finding().state().words()
              + ". Open it again on its page to take it into the vehicle.");
    }
    return subject.filter(it -> it.finding().isOpen());
  }

  private void show(Context ctx) {
    subject(ctx)
        .ifPresent(
            it ->
                page(
                    ctx,
                    it,
                    IntoForm.of(it.finding(), it.vehicle(), bench.number(it.vehicle())),
                    Map.of()));
  }

  private void page(Context ctx, Subject it, IntoForm form, Map<String, String> wrong) {
    writer.show(
        ctx,
        it.shop(),
        "Take it into the vehicle: " + it.finding().name(),
        "finding-into.jte",
        Map.of(
            "view",
            FindingView.of(it.shop(), it.finding()),
            "vehicle",
            it.vehicle(),
            "form",
            form,
            "wrong",
            wrong));
  }

  private void take(Context ctx) {
    Optional<Subject> subject = subject(ctx);
    if (subject.isEmpty()) {
      return;
    }
    Subject it = subject.get();
    IntoForm form = IntoForm.typed(PageWriter.typed(ctx), it.finding(), it.vehicle());
    Map<String, String> wrong = new LinkedHashMap<>(form.wrong());
    Optional<Signature> by = Saver.signature(ctx);
    if (by.isEmpty()) {
      wrong.put(Saver.WHO, Saver.NO_NAME.message());
    }
    if (wrong.isEmpty()) {
      wrong.putAll(taken(it, form, by.orElseThrow()));
    }
    if (wrong.isEmpty()) {
      wrong.putAll(accepted(ctx, it, form));
    }
    if (!wrong.isEmpty()) {
      page(ctx.status(HttpStatus.UNPROCESSABLE_CONTENT), it, form, wrong);
    }
  }

  /** Saves the vehicle; what is wrong, by field. */
  private Map<String, String> taken(Subject it, IntoForm form, Signature by) {
    DocumentKey key = new DocumentKey(DocumentKind.VEHICLE.word(), it.vehicle().id());
    Optional<Version> base = saver.store().documents().version(key, form.basedOn());
    Optional<ObjectNode> text =
        base.map(Version::content)
            .flatMap(FindingIntoRoutes::tree)
            .flatMap(vehicle -> form.into(vehicle, it.finding()));
    if (text.isEmpty()) {
      return Map.of("", "the vehicle no longer has what this finding concerns; look at its page");
    }
    Edits.Outcome outcome =
        new Edits(saver.store())
            .save(
                new Draft(key, text.get().toPrettyString() + "\n", form.signed(by, it.finding())),
                form.basedOn());
    if (outcome instanceof Edits.Refused refused) {
      return form.problems(refused.problems());
    }
    return ((Edits.Kept) outcome).result() instanceof SaveResult.Conflict
        ? Map.of(
            "",
            "somebody else changed the same part of the vehicle meanwhile; open this form again"
                + " and look at what it says now")
        : Map.of();
  }

  /** Accepts the finding and answers; what is wrong, by field, where that could not be. */
  private Map<String, String> accepted(Context ctx, Subject it, IntoForm form) {
    DocumentKey key = new DocumentKey(DocumentKind.FINDING.word(), it.finding().id());
    Optional<Version> newest = saver.store().documents().newest(key);
    Optional<ObjectNode> text = newest.map(Version::content).flatMap(FindingIntoRoutes::tree);
    if (newest.isEmpty() || text.isEmpty()) {
      return Map.of("", "the vehicle was changed, but the finding is no longer there");
    }
    ObjectNode changed =
        text.get()
            .put("state", FindingRoutes.Filter.word(FindingState.ACCEPTED))
            .put("outcome", form.outcome())
            .put("takenInto", form.revision());
    List<Problem> problems =
        saver.save(
            ctx,
            key,
            changed.toPrettyString() + "\n",
            newest.get().revision().number(),
            Href.impact(it.finding().id()));
    return problems.isEmpty()
        ? Map.of()
        : Map.of(
            "",
            "the vehicle was changed, but the finding could not be accepted: "
                + problems.get(0).words());
  }

  private static Optional<ObjectNode> tree(String text) {
    return JsonText.parse(text) instanceof JsonText.Tree tree
            && tree.node() instanceof ObjectNode node
        ? Optional.of(node)
        : Optional.empty();
  }
}
