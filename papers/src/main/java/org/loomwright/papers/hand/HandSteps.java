package org.loomwright.papers.hand;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.loomwright.drawing.Lettering;
import org.loomwright.drawing.ink.WireInk;
import org.loomwright.model.colour.PlainColour;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Answer;
import org.loomwright.model.design.Ask;
import org.loomwright.model.design.Band;
import org.loomwright.model.design.Edge;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.Reading;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.StepKind;
import org.loomwright.papers.words.Names;
import org.loomwright.papers.words.Phase;
import org.loomwright.papers.words.StepFace;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The steps of a guide as data, with the leads and pictures they refer to. */
final class HandSteps {
  private static final JsonNodeFactory MAKE = JsonNodeFactory.instance;
  private static final double WIDTH_MM = 90;
  private static final double HEIGHT_MM = 80;

  private final Names names;
  private final Guide guide;
  private final Map<String, Phase> phases;
  private final Map<String, Integer> pictureNumbers = new LinkedHashMap<>();
  private final ArrayNode pictures = MAKE.arrayNode();
  private final ObjectNode leads = MAKE.objectNode();

  HandSteps(Names names) {
    this.names = names;
    this.guide = names.plan().guide();
    this.phases = Phase.of(guide);
  }

  /** Pictures of the steps so far, each once. */
  ArrayNode pictures() {
    return pictures;
  }

  /** Leads of the steps so far by their id. */
  ObjectNode leads() {
    return leads;
  }

  /** One step. */
  ObjectNode of(Step step) {
    ObjectNode node =
        MAKE.objectNode()
            .put("id", step.id())
            .put("number", step.number())
            .put("kind", Words.of(step.kind()))
            .put("phase", phases.getOrDefault(step.id(), Phase.FIT).words())
            .put("place", step.place().isEmpty() ? "" : names.place(step.place()))
            .put("title", step.title())
            .put("text", step.text().equals(step.title()) ? "" : step.text())
            .put("why", step.why())
            .put("undo", Words.of(step.undo()))
            .put("minutes", step.minutes());
    step.live().ifPresent(it -> node.put("live", it.booleanValue()));
    ArrayNode openings = node.putArray("openings");
    step.openings().forEach(openings::add);
    ArrayNode tools = node.putArray("tools");
    step.tools().forEach(tools::add);
    step.act().ifPresent(it -> act(it, node));
    looksAt(step).ifPresent(it -> picture(it, node));
    step.ask().ifPresent(it -> ask(it, node.putObject("ask")));
    ArrayNode readings = node.putArray("readings");
    step.readings().forEach(it -> reading(it, readings.addObject()));
    ArrayNode next = node.putArray("next");
    for (Edge edge : guide.from(step.id())) {
      ObjectNode way = next.addObject().put("to", edge.to());
      way.set("when", Compiled.of(edge.when()));
      way.put("words", edge.words());
    }
    return node;
  }

  private void act(Act act, ObjectNode node) {
    node.put("act", Words.of(act));
    if (act instanceof Act.Open it) {
      node.put("opening", it.opening()).put("openingName", names.opening(it.opening()));
    } else if (act instanceof Act.Close it) {
      node.put("opening", it.opening()).put("openingName", names.opening(it.opening()));
    } else {
      lead(act).ifPresent(it -> node.put("lead", it.id()));
    }
  }

  private Optional<Lead> lead(Act act) {
    String id;
    if (act instanceof Act.Lay it) {
      id = it.lead();
    } else if (act instanceof Act.Land it) {
      id = it.lead();
    } else if (act instanceof Act.Change it) {
      id = it.lead();
    } else if (act instanceof Act.Park it) {
      id = it.lead();
    } else {
      return Optional.empty();
    }
    Optional<Lead> lead =
        names.plan().design().leads().stream().filter(it -> it.id().equals(id)).findFirst();
    lead.filter(it -> !leads.has(it.id())).ifPresent(it -> leads.set(it.id(), lead(it)));
    return lead;
  }

  private static ObjectNode lead(Lead lead) {
    ObjectNode node =
        MAKE.objectNode()
            .put("label", lead.label())
            .put("what", lead.what())
            .put("colour", lead.colour().text())
            .put("code", lead.colour().code());
    ArrayNode inks = node.putArray("inks");
    lead.colour().all().stream().map((PlainColour it) -> WireInk.of(it)).forEach(inks::add);
    return node;
  }

  /** The step whose picture and lead a step shows: a look at what was done shows what was done. */
  private Optional<Step> looksAt(Step step) {
    if (step.shown().isPresent() || step.kind() != StepKind.CONFIRM) {
      return Optional.of(step);
    }
    List<Edge> into = guide.edges().stream().filter(it -> it.to().equals(step.id())).toList();
    return into.size() == 1 ? guide.step(into.get(0).from()) : Optional.empty();
  }

  private void picture(Step shows, ObjectNode node) {
    if (!node.has("lead")) {
      shows.act().flatMap(this::lead).ifPresent(it -> node.put("lead", it.id()));
    }
    shows
        .shown()
        .flatMap(it -> StepFace.of(names, it, WIDTH_MM, HEIGHT_MM, Lettering.fitted()))
        .ifPresent(
            face -> {
              Integer known = pictureNumbers.get(face.svg());
              if (known == null) {
                known = pictures.size();
                pictureNumbers.put(face.svg(), known);
                pictures.add(face.svg());
              }
              node.put("picture", known.intValue()).put("pictureWords", face.words());
            });
  }

  private static void ask(Ask ask, ObjectNode node) {
    node.put("trait", ask.trait()).put("how", Words.of(ask.how()));
    // A number can only pick the answer when every answer says where it lies.
    boolean banded = ask.answers().stream().allMatch(it -> it.band().isPresent());
    ArrayNode answers = node.putArray("answers");
    for (Answer answer : ask.answers()) {
      ObjectNode one =
          answers
              .addObject()
              .put("value", answer.value())
              .put("words", answer.words())
              .put("expect", answer.expect());
      answer.band().filter(it -> banded).ifPresent(it -> band(it, one));
    }
  }

  private static void reading(Reading reading, ObjectNode node) {
    node.put("id", reading.id()).put("name", reading.name()).put("kind", Words.of(reading.kind()));
    reading.unit().ifPresent(it -> node.put("unit", it));
    reading.band().ifPresent(it -> band(it, node));
    reading.compareWith().ifPresent(it -> node.put("compareWith", it));
    reading.mostRise().ifPresent(it -> node.put("rise", it.doubleValue()));
    node.set("when", Compiled.of(reading.when()));
    node.put("words", reading.words());
    node.put("outside", reading.outside()).put("source", reading.source());
  }

  private static void band(Band band, ObjectNode node) {
    ObjectNode limits = node.putObject("band");
    band.low().ifPresent(it -> limits.put("low", it.doubleValue()));
    band.high().ifPresent(it -> limits.put("high", it.doubleValue()));
    limits.put("unit", band.unit());
  }
}
