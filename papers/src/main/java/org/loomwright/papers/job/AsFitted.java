package org.loomwright.papers.job;

import java.io.IOException;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.loomwright.drawing.Lettering;
import org.loomwright.drawing.map.RunMap;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.StepKind;
import org.loomwright.model.job.Deviation;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.JobState;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.picture.Picture;
import org.loomwright.model.picture.Pictures;
import org.loomwright.model.vehicle.PlanView;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.papers.page.Column;
import org.loomwright.papers.page.Fonts;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.page.OutlineLettering;

/**
 * What was fitted to one vehicle, for somebody who sees it in five years and knows nothing of the
 * job: what lies where, what protects it, what was measured, and how it comes out again.
 */
public final class AsFitted {
  private static final double MAP_WIDTH_MM = 174;
  private static final double MAP_HEIGHT_MM = 225;
  private static final double CODE_MM = 42;

  /** More deviations than this are broken over pages. */
  private static final int MOST_KEPT = 8;

  private final Fitted fitted;
  private final Pictures pictures;
  private final Lettering lettering;
  private final Html html = new Html();

  private AsFitted(Fitted fitted, Pictures pictures, Lettering lettering) {
    this.fitted = fitted;
    this.pictures = pictures;
    this.lettering = lettering;
  }

  /**
   * The paper. The same job, plan and pictures always give the same bytes.
   *
   * @param order the kit as it was fitted, with its documents
   * @param plan its plan
   * @param pictures photos of the job, by file
   * @throws IOException when the file can't be made
   */
  public static byte[] pdf(Job job, KitOrder order, Plan plan, Pictures pictures)
      throws IOException {
    Fonts fonts = Fonts.load();
    Fitted fitted = new Fitted(job, order, plan);
    AsFitted paper = new AsFitted(fitted, pictures, new OutlineLettering(fonts));
    paper.write();
    return JobPaper.pdf(
        "As fitted: " + order.kit().name() + ", job " + job.id(),
        "what was fitted to one vehicle",
        1,
        paper.html,
        fonts);
  }

  private void write() {
    JobPaper.runningWords(fitted, "As fitted", html);
    html.open("section", "cover", "job");
    head();
    standing();
    found();
    html.close("section");
    section("added", "What was added, and where", true, () -> new FittedWiring(fitted).write(html));
    if (!fitted.leads().isEmpty()) {
      section("map", "Run map of this vehicle", true, this::map);
    }
    section("values", "Values, before and after", true, this::values);
    section("otherwise", "What is otherwise than planned", false, this::deviations);
    if (!fitted.job().photos().isEmpty()) {
      section("photos", "Photos", false, () -> new JobPhotos(fitted, pictures).write(html));
    }
    section("out", "How to take it out again", true, () -> new TakingOut(fitted).write(html));
    section("cautions", "Cautions", false, this::cautions);
    sign();
  }

  /** What is short goes on below what stands before it. */
  private void section(String id, String title, boolean newPage, Runnable body) {
    html.open("section", newPage ? "" : "onward", id);
    html.line("h1", "", title);
    body.run();
    html.close("section");
  }

  private void head() {
    Job job = fitted.job();
    html.line("p", "kicker", "As fitted · job " + job.id())
        .line("h1", "", fitted.order().kit().name())
        .line("p", "ident", JobPaper.kit(fitted) + " · job revision " + job.revision());
    html.open("table", "head").open("tr", "").open("td", "").open("table", "facts");
    JobPaper.fact(html, "Vehicle", fitted.order().vehicle().name() + "\n" + job.vehicleNote());
    job.owner().ifPresent(it -> JobPaper.fact(html, "Owner", it));
    JobPaper.fact(html, "Part number", job.partNumber().orElse("not noted"));
    JobPaper.fact(html, "Serial number", job.serial().orElse("not noted"));
    JobPaper.fact(
        html,
        job.state() == JobState.SURVEY ? "Surveyed by" : "Fitted by",
        job.by() + ", " + job.when());
    JobPaper.fact(html, "Job", job.id() + ", " + job.name());
    JobPaper.fact(html, "Guide", job.guide().map(it -> "fingerprint " + it).orElse("not noted"));
    html.close("table").close("td").open("td", "code");
    html.picture(QrCode.svg(code(), CODE_MM)).words("kit, serial number, job, guide");
    html.close("td").close("tr").close("table");
  }

  /** What the code says: what a shop needs to find this job again. */
  private String code() {
    Job job = fitted.job();
    StringBuilder text = new StringBuilder("LOOMWRIGHT JOB ").append(job.id());
    text.append("\nkit ").append(fitted.order().kit().id());
    text.append(" revision ").append(fitted.order().kit().revision());
    job.release().ifPresent(it -> text.append(" release ").append(it));
    job.partNumber().ifPresent(it -> text.append("\npart number ").append(it));
    job.serial().ifPresent(it -> text.append("\nserial ").append(it));
    job.guide().ifPresent(it -> text.append("\nguide ").append(it));
    return text.toString();
  }

  private void standing() {
    Job job = fitted.job();
    boolean signed = job.state() == JobState.SIGNED_OFF;
    html.open("div", signed ? "status" : "status no");
    html.line("p", "word", signed ? "Signed off" : "NOT SIGNED OFF: " + job.state().words());
    job.signOff()
        .ifPresent(
            it ->
                html.line(
                    "p",
                    "",
                    it.by() + ", " + it.when() + it.words().map(words -> ". " + words).orElse("")));
    if (!signed) {
      html.line(
          "p",
          "",
          "This paper shows how far the work has come. What is marked \"not done\" below is not in"
              + " the vehicle, or not finished.");
    }
    html.close("div");
  }

  private void found() {
    html.line("h2", "", "What was found on this vehicle");
    html.table(
        List.of(Column.key("About", 34), Column.text("Found", 66)),
        fitted.job().answers().entrySet().stream()
            .map(it -> List.of(about(it.getKey()), value(it.getKey(), it.getValue())))
            .toList());
    html.line("h2", "", "Which case of the kit it is");
    List<Case> cases =
        fitted.plan().cases().stream().filter(it -> fitted.cases().contains(it.id())).toList();
    html.table(
        List.of(Column.key("Case", 10), Column.text("About", 40), Column.text("Vehicles", 50)),
        cases.stream().map(it -> List.of(it.id(), it.topic(), it.words())).toList());
    if (!fitted.undecided().isEmpty()) {
      html.line(
          "p",
          "safety",
          "The answers do not decide the case of "
              + String.join(", ", fitted.undecided())
              + "; what belongs to it is missing from this paper.");
    }
  }

  private String about(String trait) {
    return trait(trait).map(Trait::name).orElse(trait);
  }

  private String value(String trait, String value) {
    return trait(trait).stream()
        .flatMap(it -> it.values().stream())
        .filter(it -> it.id().equals(value))
        .map(it -> it.words())
        .findFirst()
        .orElse(value);
  }

  private Optional<Trait> trait(String id) {
    return fitted.order().vehicle().traits().stream().filter(it -> it.id().equals(id)).findFirst();
  }

  private void map() {
    html.line(
        "p",
        "",
        "Only what this vehicle has. Numbered places and the leads between them; cards say what"
            + " ends where.");
    Optional<Picture> picture =
        fitted
            .order()
            .vehicle()
            .planView()
            .flatMap(PlanView::picture)
            .flatMap(it -> fitted.order().pictures().find(it.file()));
    RunMap.pages(
            FittedPlan.of(fitted),
            fitted.order().vehicle(),
            picture,
            MAP_WIDTH_MM,
            MAP_HEIGHT_MM,
            lettering)
        .forEach(html::picture);
  }

  private void values() {
    List<Value> values = Value.of(fitted);
    if (values.isEmpty()) {
      html.line("p", "", "No values were taken.");
      return;
    }
    html.table(
        List.of(
            Column.text("What", 46),
            Column.text("Value", 15),
            Column.text("Before the work", 13),
            Column.text("Wanted", 15),
            Column.key("", 11)),
        values.stream()
            .map(
                it ->
                    List.of(it.name(), it.value(), it.before().orElse(""), it.wanted(), it.words()))
            .toList());
    html.line(
        "p",
        "note",
        "Values lie where they have to when the last column says so; one outside stays only with a"
            + " reason, given under what is otherwise than planned.");
  }

  private void deviations() {
    if (fitted.job().deviations().isEmpty()) {
      html.line("p", "", "Nothing was noted.");
      return;
    }
    html.table(
        fitted.job().deviations().size() <= MOST_KEPT ? "kept" : "",
        List.of(
            Column.text("Where", 30),
            Column.text("What was otherwise", 35),
            Column.text("Reason, and what was done", 35)),
        fitted.job().deviations().stream().map(this::deviation).toList());
  }

  private List<String> deviation(Deviation it) {
    return List.of(
        it.step().map(fitted::stepWords).orElse("the whole job"),
        it.was(),
        it.why().orElse("no reason given yet")
            + it.finding().map(finding -> "\nfinding " + finding).orElse(""));
  }

  private void cautions() {
    Set<String> said = new LinkedHashSet<>();
    for (Step it : fitted.way()) {
      if (it.kind() == StepKind.CAUTION && said.add(it.title() + "\n" + it.text())) {
        html.open("div", "box")
            .line("p", "title", it.title())
            .line("p", "", it.text())
            .close("div");
      }
    }
    if (said.isEmpty()) {
      html.line("p", "", "The guide says none for this vehicle.");
    }
  }

  private void sign() {
    html.open("div", "sign");
    fitted
        .job()
        .signOff()
        .ifPresentOrElse(
            it -> html.line("p", "", "Signed off by " + it.by() + " on " + it.when() + "."),
            () -> html.line("p", "", "Not signed off yet."));
    html.open("p", "").blank("Name", 60).blank("Date", 30).blank("Signature", 50).close("p");
    html.close("div");
  }
}
