package org.loomwright.papers.fit;

import java.util.Locale;
import org.loomwright.model.design.Plan;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.vehicle.TellHow;
import org.loomwright.planner.builds.Diagram;
import org.loomwright.planner.fit.Demands;
import org.loomwright.planner.fit.FitCheck;
import org.loomwright.planner.fit.FitQuestion;
import org.loomwright.planner.fit.FitTrait;
import org.loomwright.planner.fit.Left;
import org.loomwright.planner.fit.Topic;
import org.loomwright.planner.fit.Wiring;
import org.loomwright.planner.fit.Work;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The data of a fit check as one line of JSON. A diagram is {@code {"nodes": [[trait, way
 * on...]...], "ends": [...], "top": way}}; an end is {@code [outcomes, sets, kind]} or a weight.
 */
final class FitData {
  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  private final ObjectNode root = MAPPER.createObjectNode();

  private FitData() {}

  static String text(KitOrder order, Plan plan, FitCheck check, int verifiedOn) {
    FitData data = new FitData();
    data.write(order, plan, check, verifiedOn);
    return MAPPER.writeValueAsString(data.root);
  }

  private void write(KitOrder order, Plan plan, FitCheck check, int verifiedOn) {
    ObjectNode kit = root.putObject("kit");
    kit.put("id", plan.kit().id());
    kit.put("name", plan.kit().name());
    kit.put("revision", plan.kit().revision());
    kit.put("vehicleId", order.vehicle().id());
    kit.put("vehicle", order.vehicle().name());
    root.put("verifiedOn", verifiedOn);
    ArrayNode questions = root.putArray("questions");
    check.questions().forEach(it -> question(questions.addObject(), it));
    ArrayNode traits = root.putArray("traits");
    check.traits().forEach(it -> trait(traits.addObject(), it));
    wiring(root.putObject("wiring"), check.wiring());
    demands(root.putObject("modules"), check.modules());
    demands(root.putObject("coding"), check.coding());
    ObjectNode numbers = root.putObject("numbers");
    check.numbers().ids().forEach(numbers.putArray("ids")::add);
    diagram(numbers.putObject("whole"), check.numbers().whole());
    work(root.putObject("work"), check.work());
  }

  private static void question(ObjectNode node, FitQuestion question) {
    node.put("id", question.id());
    node.put("name", question.name());
    node.put("text", question.text());
    node.put("how", how(question.how()));
    node.put("place", question.place());
    ArrayNode decides = node.putArray("decides");
    for (Topic topic : question.decides()) {
      decides.add(word(topic));
    }
    ArrayNode options = node.putArray("options");
    for (FitQuestion.Option option : question.options()) {
      ObjectNode one = options.addObject();
      one.put("value", option.value());
      one.put("words", option.words());
      one.put("expect", option.expect());
      one.put("share", option.share());
    }
  }

  private static void trait(ObjectNode node, FitTrait trait) {
    node.put("id", trait.id());
    node.put("name", trait.name());
    node.put("how", how(trait.how()));
    node.put("place", trait.place());
    trait.openings().forEach(node.putArray("openings")::add);
    node.put("minutes", trait.minutes());
  }

  private static void wiring(ObjectNode node, Wiring wiring) {
    diagram(node.putObject("whole"), wiring.whole());
    ArrayNode refusals = node.putArray("refusals");
    for (Wiring.Refusal refusal : wiring.refusals()) {
      ObjectNode one = refusals.addObject();
      one.put("builds", refusal.builds());
      refusal.needs().forEach(one.putArray("needs")::add);
      one.put("reason", refusal.reason());
      diagram(one.putObject("concerned"), refusal.concerned());
    }
    node.put("held", wiring.held().orElse(""));
  }

  private static void demands(ObjectNode node, Demands demands) {
    diagram(node.putObject("whole"), demands.whole());
    ArrayNode each = node.putArray("each");
    for (Demands.Demanded demanded : demands.each()) {
      ObjectNode one = each.addObject();
      one.put("words", demanded.words());
      one.put("evidence", demanded.evidence());
      diagram(one.putObject("needed"), demanded.needed());
    }
  }

  private static void work(ObjectNode node, Work work) {
    weights(node.putObject("whole"), work.whole());
    ArrayNode parts = node.putArray("parts");
    for (Work.WorkPart part : work.parts()) {
      ObjectNode one = parts.addObject();
      one.put("minutes", part.minutes());
      weights(one.putObject("weight"), part.weight());
    }
    ArrayNode items = node.putArray("items");
    for (Work.Item item : work.items()) {
      ObjectNode one = items.addObject();
      one.put("kind", word(item.kind()));
      one.put("words", item.words());
      diagram(one.putObject("done"), item.done());
    }
  }

  private static void diagram(ObjectNode node, Diagram<Left> diagram) {
    nodes(node, diagram);
    ArrayNode ends = node.putArray("ends");
    for (Left left : diagram.ends()) {
      ArrayNode end = ends.addArray();
      left.classes().forEach(end.addArray()::add);
      ArrayNode sets = end.addArray();
      left.sets().forEach(set -> set.forEach(sets.addArray()::add));
      end.add(left.kind());
    }
  }

  private static void weights(ObjectNode node, Diagram<Double> diagram) {
    nodes(node, diagram);
    diagram.ends().forEach(node.putArray("ends")::add);
  }

  private static void nodes(ObjectNode node, Diagram<?> diagram) {
    ArrayNode nodes = node.putArray("nodes");
    for (Diagram.Node one : diagram.nodes()) {
      ArrayNode line = nodes.addArray();
      line.add(one.trait());
      one.next().forEach(line::add);
    }
    node.put("top", diagram.top());
  }

  private static String how(TellHow how) {
    return how.isReading() ? "measure" : how == TellHow.LOOK ? "look" : "ask";
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
