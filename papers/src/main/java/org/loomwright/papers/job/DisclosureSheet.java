package org.loomwright.papers.job;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.loomwright.model.design.FuseFit;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.Plan;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.JobState;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.papers.page.Column;
import org.loomwright.papers.page.Fonts;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.words.Figures;
import org.loomwright.papers.words.Names;

/** One page for the owner of the vehicle, in plain words: what was added, and what follows. */
public final class DisclosureSheet {
  /** Letters are made smaller until all is on one page, but not smaller than can be read. */
  private static final double[] SIZES = {1.08, 1, 0.93, 0.87, 0.81};

  private static final double CODE_MM = 24;

  private final Fitted fitted;
  private final Names names;
  private final Html html = new Html();

  private DisclosureSheet(Fitted fitted) {
    this.fitted = fitted;
    this.names = fitted.names();
  }

  /**
   * The sheet. The same job and plan always give the same bytes.
   *
   * @param order the kit as it was fitted, with its documents
   * @param plan its plan
   * @throws IOException when the file can't be made
   */
  public static byte[] pdf(Job job, KitOrder order, Plan plan) throws IOException {
    Fonts fonts = Fonts.load();
    DisclosureSheet sheet = new DisclosureSheet(new Fitted(job, order, plan));
    sheet.write();
    byte[] file = new byte[0];
    for (double size : SIZES) {
      file =
          JobPaper.pdf(
              "What was added to your vehicle: " + order.kit().name() + ", job " + job.id(),
              "disclosure to the owner of a vehicle",
              size,
              sheet.html,
              fonts);
      if (pages(file) == 1) {
        return file;
      }
    }
    return file;
  }

  private static int pages(byte[] file) throws IOException {
    try (PDDocument document = Loader.loadPDF(file)) {
      return document.getNumberOfPages();
    }
  }

  private void write() {
    JobPaper.runningWords(fitted, "For the owner of the vehicle", html);
    html.open("section", "cover sheet", "sheet");
    head();
    GuideFollowed.write(fitted, html);
    added();
    draws();
    fuses();
    rules();
    warranty();
    sign();
    html.close("section");
  }

  private void head() {
    Job job = fitted.job();
    html.line("h1", "", "What was added to your vehicle");
    html.open("table", "head").open("tr", "").open("td", "").open("table", "facts");
    JobPaper.fact(html, "Vehicle", fitted.order().vehicle().name() + ", " + job.vehicleNote());
    job.owner().ifPresent(it -> JobPaper.fact(html, "Owner", it));
    JobPaper.fact(html, "Fitted by", job.by() + ", " + job.when());
    JobPaper.fact(
        html,
        "Kit",
        fitted.order().kit().name()
            + job.partNumber().map(it -> ", part number " + it).orElse("")
            + job.serial().map(it -> ", serial number " + it).orElse(""));
    html.close("table");
    if (job.state() != JobState.SIGNED_OFF) {
      html.line(
          "p",
          "safety",
          "The work is not signed off ("
              + job.state().words()
              + "): this sheet says what is planned, not what is in the vehicle.");
    }
    html.close("td").open("td", "code");
    html.picture(QrCode.svg("LOOMWRIGHT JOB " + job.id(), CODE_MM));
    html.close("td").close("tr").close("table");
  }

  private void added() {
    html.line("h2", "", "What it is");
    List<String> items = new ArrayList<>();
    for (Equipment it : fitted.order().equipment()) {
      items.add("Wiring for: " + it.name() + ".");
    }
    List<Lead> leads = fitted.leads();
    items.add(
        count(leads.size(), "wire", "wires")
            + " and "
            + count(fitted.fuses().size(), "fuse", "fuses")
            + " were added. Each wire has a label; the as-fitted paper says where each one lies."
            + " Keep that paper with the vehicle's documents.");
    parked().ifPresent(items::add);
    List<String> astray = fitted.astray();
    if (!astray.isEmpty()) {
      items.add("Done, but not called for by the answers: " + String.join("; ", astray) + ".");
    }
    splices().ifPresent(items::add);
    fitted
        .job()
        .deviations()
        .forEach(
            it ->
                items.add(
                    "Done otherwise than usual: "
                        + it.was()
                        + it.why().map(why -> " (" + why + ")").orElse("")));
    html.bullets(items);
  }

  /** Wires parked as a whole, and single ends of others. */
  private Optional<String> parked() {
    int wires = 0;
    int ends = 0;
    for (Lead it : fitted.leads()) {
      List<Landing> landings =
          Stream.of(it.a(), it.b()).flatMap(end -> fitted.landing(end).stream()).toList();
      int parked = (int) landings.stream().filter(Landing.Parked.class::isInstance).count();
      if (parked == landings.size()) {
        wires++;
      } else {
        ends += parked;
      }
    }
    if (wires + ends == 0) {
      return Optional.empty();
    }
    List<String> what = new ArrayList<>();
    if (wires > 0) {
      what.add(count(wires, "wire", "wires"));
    }
    if (ends > 0) {
      what.add(count(ends, "wire end", "wire ends"));
    }
    return Optional.of(
        Figures.capital(String.join(" and ", what))
            + (wires + ends == 1 ? " is" : " are")
            + " not needed on this vehicle: capped and taped back. Nothing may be connected to "
            + (wires + ends == 1 ? "it." : "them."));
  }

  private Optional<String> splices() {
    List<String> opened =
        fitted.leads().stream()
            .flatMap(it -> Stream.of(it.a(), it.b()))
            .flatMap(it -> fitted.landing(it).stream())
            .filter(Landing.IntoCircuit.class::isInstance)
            .map(Landing.IntoCircuit.class::cast)
            .map(
                it ->
                    names.landing(it).replaceFirst("^spliced into ", "")
                        + " ("
                        + names.place(it.place())
                        + ")")
            .distinct()
            .toList();
    return opened.isEmpty()
        ? Optional.empty()
        : Optional.of(
            (opened.size() == 1
                    ? "A wire of the vehicle was opened and a new one joined to it: "
                    : "Wires of the vehicle were opened and new ones joined to them: ")
                + String.join("; ", opened)
                + ". This can't be undone as it was.");
  }

  private void draws() {
    List<String> lines = new Draws(fitted).lines();
    if (!lines.isEmpty()) {
      html.line("h2", "", "What it draws").bullets(lines);
    }
  }

  private void fuses() {
    if (fitted.fuses().isEmpty()) {
      return;
    }
    html.line("h2", "", "Its fuses");
    html.table(
        List.of(Column.key("Fuse", 16), Column.text("Where", 44), Column.text("Protects", 40)),
        fitted.fuses().stream().map(this::fuse).toList());
    html.line(
        "p",
        "",
        "Replace a blown fuse once, by one of the same rating. If it blows again, leave it out and"
            + " have the cause found.");
  }

  private List<String> fuse(FuseFit it) {
    String place =
        fitted
            .order()
            .vehicle()
            .fuseBlock(it.block())
            .map(block -> names.place(block.place()))
            .orElse("");
    return List.of(
        Figures.amps(it.ratingA()) + " A",
        names.owner(it.block())
            + ", slot "
            + it.slot()
            + (place.isEmpty() ? "" : " (" + place + ")"),
        fitted.leads().stream()
            .filter(lead -> it.leads().contains(lead.id()))
            .map(Lead::what)
            .distinct()
            .collect(Collectors.joining(", ")));
  }

  private void rules() {
    html.line("h2", "", "What not to do");
    html.bullets(
        List.of(
            "Do not put in a larger fuse, a piece of wire or foil: the wire behind it can burn.",
            "Do not connect anything else to the added wires, and do not cut their labels off.",
            "Do not lay anything heavy or sharp on the wires, and keep them clear when boards or"
                + " fittings are screwed down.",
            "If something smells, smokes, flickers or stays on: switch it off, take its fuse out,"
                + " and have it looked at before you go on.",
            "Tell every workshop about it before they work on seats, trim, fuse blocks, batteries or"
                + " airbags, and show them the as-fitted paper."));
  }

  private void warranty() {
    html.line("h2", "", "Warranty and law");
    html.line(
        "p",
        "",
        "Whether the vehicle maker's warranty and the approval of the vehicle stay as they are is for"
            + " the vehicle maker and local law to say, not for this sheet. Ask the maker's dealer"
            + " about the rules for body builders, and the insurer and the testing authority"
            + " whether the change has to be entered, before the vehicle is driven on the road"
            + " with it.");
  }

  private void sign() {
    html.open("div", "sign").line("p", "", "I was given this sheet and the as-fitted paper.");
    html.open("p", "").blank("Owner", 70).blank("Date", 28).close("p");
    html.open("p", "").blank("Workshop", 70).blank("Date", 28).close("p");
    html.close("div");
  }

  private static String count(int number, String one, String many) {
    return number == 1 ? "one " + one : String.format(Locale.ROOT, "%d %s", number, many);
  }
}
