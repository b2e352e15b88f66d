package org.loomwright.papers.hand;

import java.util.Optional;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.Guide;
import org.loomwright.model.design.PartNumber;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.Unserved;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.model.vehicle.Exclusion;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.TraitValue;
import org.loomwright.papers.words.Names;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Everything the one-file guide knows of kit, vehicle and steps, as one JSON object. */
final class HandData {
  private static final JsonNodeFactory MAKE = JsonNodeFactory.instance;

  private HandData() {}

  /** The object; the order of its keys never changes. */
  static ObjectNode of(KitOrder order, Plan plan, Optional<Integer> release) {
    Names names = new Names(order, plan);
    Guide guide = plan.guide();
    ObjectNode data = MAKE.objectNode();
    data.put("form", "loomwright guide").put("version", 1);
    data.put("kit", order.kit().id())
        .put("kitName", order.kit().name())
        .put("revision", order.kit().revision());
    release.ifPresent(it -> data.put("release", it.intValue()));
    data.put("vehicle", order.vehicle().id())
        .put("vehicleName", order.vehicle().name())
        .put("vehicleRevision", order.vehicle().revision())
        .put("guide", GuidePrint.of(plan))
        .put("sound", plan.releasable())
        .put("minutes", Math.round(guide.expectedMinutes()))
        .put("questions", guide.expectedQuestions());
    ArrayNode tools = data.putArray("tools");
    guide.tools().forEach(tools::add);
    traits(order, data.putArray("traits"));
    rules(order, plan, names, data.putArray("never"));
    cases(plan, names, data.putArray("cases"));
    numbers(plan, names, data.putArray("numbers"));
    HandSteps steps = new HandSteps(names);
    ArrayNode list = data.putArray("steps");
    for (Step step : guide.steps()) {
      list.add(steps.of(step));
    }
    data.put("start", guide.start());
    ArrayNode ends = data.putArray("ends");
    guide.ends().forEach(ends::add);
    data.set("leads", steps.leads());
    data.set("pictures", steps.pictures());
    return data;
  }

  private static void traits(KitOrder order, ArrayNode list) {
    for (Trait trait : order.vehicle().traits()) {
      ObjectNode node = list.addObject().put("id", trait.id()).put("name", trait.name());
      ArrayNode values = node.putArray("values");
      for (TraitValue value : trait.values()) {
        values.addObject().put("id", value.id()).put("words", value.words());
      }
    }
  }

  /** Builds that don't exist, and builds the kit can't serve: no answers may lead there. */
  private static void rules(KitOrder order, Plan plan, Names names, ArrayNode list) {
    for (Exclusion rule : order.vehicle().rules()) {
      ObjectNode node = list.addObject();
      node.set("when", Compiled.of(rule.exclude()));
      node.put("why", rule.reason()).put("unserved", false);
    }
    for (Unserved one : plan.unserved()) {
      ObjectNode node = list.addObject();
      node.set("when", Compiled.of(one.when()));
      node.put("why", names.prose(one.reason())).put("unserved", true);
    }
  }

  private static void cases(Plan plan, Names names, ArrayNode list) {
    for (Case one : plan.cases()) {
      ObjectNode node =
          list.addObject()
              .put("id", one.id())
              .put("component", one.component())
              .put("topic", names.brief(one.topic()))
              .put("words", one.words());
      node.set("when", Compiled.of(one.when()));
    }
  }

  private static void numbers(Plan plan, Names names, ArrayNode list) {
    for (PartNumber number : plan.design().partNumbers()) {
      ObjectNode node = list.addObject().put("id", number.id()).put("words", number.words());
      ArrayNode cases = node.putArray("cases");
      number.cases().forEach(cases::add);
      ArrayNode labels = node.putArray("labels");
      number.leads().forEach(it -> labels.add(names.label(it)));
    }
  }
}
