package org.loomwright.papers.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomwright.model.design.FuseFit;
import org.loomwright.model.design.Joint;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.LeadEnd;
import org.loomwright.papers.page.Column;
import org.loomwright.papers.page.Html;
import org.loomwright.papers.words.Figures;
import org.loomwright.papers.words.Names;

/** Leads, fuses, grounds, joints and parked ends of one vehicle. */
final class FittedWiring {
  private final Fitted fitted;
  private final Names names;

  FittedWiring(Fitted fitted) {
    this.fitted = fitted;
    this.names = fitted.names();
  }

  void write(Html html) {
    astray(html);
    if (fitted.leads().isEmpty()) {
      html.line("p", "", "The answers so far lead to no lead of this kit.");
      return;
    }
    html.table(
        List.of(
            Column.key("Label", 17),
            Column.text("Colour", 10),
            Column.text("Wire", 15),
            Column.text("One end", 23),
            Column.text("Other end", 23),
            Column.number("mm", 6),
            Column.number("Fuse A", 6)),
        fitted.leads().stream().map(this::lead).toList());
    fuses(html);
    grounds(html);
    joints(html);
    parked(html);
  }

  /** What sits in the vehicle off the way; the tables below show the way. */
  private void astray(Html html) {
    List<String> astray = fitted.astray();
    if (!astray.isEmpty()) {
      html.open("div", "box grave")
          .line("p", "title", "Done, but not called for by the answers")
          .line("p", "", "It is in the vehicle, and missing from the tables and the map below:")
          .bullets(astray)
          .close("div");
    }
  }

  private List<String> lead(Lead it) {
    return List.of(
        it.label().contains(it.what()) ? it.label() : it.label() + "\n" + it.what(),
        it.colour().text() + "\n" + it.colour().code(),
        names.part(it.wire()) + "\n" + Figures.area(it.areaMm2()) + " mm²",
        end(it, "a", it.a()),
        end(it, "b", it.b()),
        Figures.mm(it.lengthMm()),
        it.fuseA() > 0 ? Figures.amps(it.fuseA()) : "");
  }

  private String end(Lead lead, String name, LeadEnd end) {
    Optional<Landing> landing = fitted.landing(end);
    if (landing.isEmpty()) {
      return "not in this vehicle";
    }
    String words = names.landing(landing.get());
    String place = names.place(end.place());
    return notDone(fitted.isLanded(lead, name))
        + words
        + (words.contains(place) ? "" : "\n" + place);
  }

  private static String notDone(boolean done) {
    return done ? "" : "NOT DONE: ";
  }

  private void fuses(Html html) {
    html.line("h2", "", "Fuses");
    if (fitted.fuses().isEmpty()) {
      html.line("p", "", "No fuse was added.");
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    for (FuseFit it : fitted.fuses()) {
      rows.add(
          List.of(
              notDone(fitted.isFitted(it)) + names.owner(it.block()) + ", slot " + it.slot(),
              place(it.block()),
              Figures.amps(it.ratingA()) + " A\n" + names.part(it.part()),
              leads(it.leads())));
    }
    html.table(
        "kept",
        List.of(
            Column.key("Slot", 30),
            Column.text("Where", 24),
            Column.text("Fuse", 20),
            Column.text("Protects", 26)),
        rows);
  }

  private String place(String block) {
    return fitted.order().vehicle().fuseBlock(block).map(it -> names.place(it.place())).orElse("");
  }

  private String leads(List<String> ids) {
    List<String> here = fitted.leads().stream().map(Lead::id).filter(ids::contains).toList();
    return String.join(", ", here.stream().map(names::label).toList());
  }

  private void grounds(Html html) {
    Map<String, List<String>> byGround = new LinkedHashMap<>();
    ends(
        (lead, end, landing) -> {
          if (landing instanceof Landing.OnGround it) {
            byGround
                .computeIfAbsent(it.ground(), key -> new ArrayList<>())
                .add(notDone(fitted.isLanded(lead, end)) + lead.label());
          }
        });
    html.line("h2", "", "Ground studs");
    if (byGround.isEmpty()) {
      html.line("p", "", "No lead goes to a ground stud.");
      return;
    }
    html.table(
        "kept",
        List.of(Column.key("Stud", 40), Column.text("Where", 30), Column.text("Added", 30)),
        byGround.entrySet().stream()
            .map(
                it ->
                    List.of(
                        names.owner(it.getKey()),
                        fitted
                            .order()
                            .vehicle()
                            .ground(it.getKey())
                            .map(stud -> names.place(stud.place()))
                            .orElse(""),
                        String.join("\n", it.getValue())))
            .toList());
  }

  private void joints(Html html) {
    List<List<String>> rows = new ArrayList<>();
    for (Joint it : fitted.joints()) {
      rows.add(
          List.of(
              "joint " + it.id(),
              names.place(it.place()),
              fitted.leads().stream()
                  .filter(lead -> it.leads().contains(lead.id()))
                  .map(lead -> notDone(isJoined(lead, it)) + lead.label())
                  .collect(Collectors.joining(", "))));
    }
    ends(
        (lead, end, landing) -> {
          if (landing instanceof Landing.IntoCircuit it) {
            rows.add(
                List.of(
                    Figures.capital(names.landing(it)),
                    names.place(it.place()),
                    notDone(fitted.isLanded(lead, end)) + lead.label()));
          }
        });
    if (!rows.isEmpty()) {
      html.line("h2", "", "Joints and splices");
      html.table(
          "kept",
          List.of(Column.key("What", 42), Column.text("Where", 28), Column.text("Leads", 30)),
          rows);
    }
  }

  /** Whether the ends of a lead that are in a joint are where they belong. */
  private boolean isJoined(Lead lead, Joint joint) {
    return Stream.of("a", "b")
        .filter(
            it ->
                fitted
                    .landing(it.equals("a") ? lead.a() : lead.b())
                    .filter(
                        landing ->
                            landing instanceof Landing.InJoint in && in.joint().equals(joint.id()))
                    .isPresent())
        .allMatch(it -> fitted.isLanded(lead, it));
  }

  private void parked(Html html) {
    List<List<String>> rows = new ArrayList<>();
    List<Boolean> done = new ArrayList<>();
    ends(
        (lead, end, landing) -> {
          if (landing instanceof Landing.Parked it) {
            done.add(fitted.isLanded(lead, end));
            rows.add(
                List.of(
                    notDone(fitted.isLanded(lead, end))
                        + lead.label()
                        + ", end "
                        + end.toUpperCase(Locale.ROOT),
                    names.place(it.place()),
                    names.part(it.cap())));
          }
        });
    if (!rows.isEmpty()) {
      html.line(
          "h2",
          "",
          done.contains(false)
              ? "Parked ends"
              : "Parked ends: capped, labelled, taped back, never live");
      html.table(
          "kept",
          List.of(Column.key("End", 44), Column.text("Where", 30), Column.text("Cap", 26)),
          rows);
    }
  }

  /** What is done with each end. */
  private interface EndUse {
    void end(Lead lead, String end, Landing landing);
  }

  private void ends(EndUse use) {
    for (Lead lead : fitted.leads()) {
      fitted.landing(lead.a()).ifPresent(it -> use.end(lead, "a", it));
      fitted.landing(lead.b()).ifPresent(it -> use.end(lead, "b", it));
    }
  }
}
