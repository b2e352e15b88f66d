package org.loomwright.model.finding;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.condition.ConditionException;
import org.loomwright.model.quantity.Percent;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * Takes what was found into the text of its vehicle. Each answers with a changed copy, or with
 * nothing where the text no longer has what the finding speaks of; whether the result can be read
 * is for the reader of documents to say.
 */
public final class IntoVehicle {
  private static final BigDecimal HUNDRED = new BigDecimal(100);

  private IntoVehicle() {}

  /** Why a finding can't be evidence of what it concerns, as a clause; empty when it can. */
  public static String noEvidence(Finding finding) {
    return finding
        .at()
        .map(
            it ->
                switch (it.sort()) {
                  case PLACE -> "a place keeps no evidence of its own";
                  case BLOCK -> "a fuse block keeps none of its own; its slots do";
                  case CONNECTOR, CAVITY, SLOT, GROUND, CIRCUIT, RUN -> "";
                })
        .orElse("this finding does not say what it concerns");
  }

  /** The thing it concerns is known by this finding from now on. */
  public static Optional<ObjectNode> evidence(ObjectNode vehicle, Finding finding) {
    ObjectNode copy = vehicle.deepCopy();
    Optional<ObjectNode> thing = finding.at().flatMap(it -> thing(copy, it));
    thing.ifPresent(it -> it.set("evidence", evidence(copy, finding, Optional.of(it))));
    return thing.map(it -> copy);
  }

  /**
   * A trait has one more value.
   *
   * @param trait id of the trait
   * @param value id of the value
   * @param words its builds, a clause
   * @param expect what is seen on them when the trait is looked at
   * @param band where the meter reads on them, such as "4 V to 6 V"; absent where the trait is not
   *     measured, or its values have no bands
   * @param share how common they are, in per cent; where the other values have shares, these give
   *     way in proportion, and where they have none, it is not written
   */
  public static Optional<ObjectNode> value(
      ObjectNode vehicle,
      String trait,
      String value,
      String words,
      String expect,
      Optional<String> band,
      BigDecimal share) {
    ObjectNode copy = vehicle.deepCopy();
    Optional<ObjectNode> found = with(copy.path("traits"), "id", trait);
    found.ifPresent(
        it -> {
          boolean shared = giveWay(it.path("values"), HUNDRED.subtract(share));
          ObjectNode made = it.withArray("values").addObject().put("id", value).put("words", words);
          if (shared) {
            made.put("share", percent(share));
          }
          ObjectNode tell = it.withObject("tell");
          tell.withObject("expect").put(value, expect);
          band.ifPresent(text -> tell.withObject("bands").put(value, text));
        });
    return found.map(it -> copy);
  }

  /**
   * Builds differ in one more way, and the condition of the thing speaks of it. On builds as
   * recorded the condition says what it said before. A fact that nobody knew is known by the trait
   * from now on.
   */
  public static Optional<ObjectNode> trait(ObjectNode vehicle, Finding finding, NewTrait made) {
    ObjectNode copy = vehicle.deepCopy();
    Optional<ObjectNode> thing = finding.at().flatMap(it -> holder(copy, it, made.fact()));
    thing.ifPresent(
        it -> {
          it.put(made.fact().key(), condition(it.path(made.fact().key()), made).text());
          // A question of its own is for facts that nobody knows; a cavity has one for two facts.
          if (!asks(it)) {
            it.remove("tell");
          }
          it.set("evidence", evidence(copy, finding, Optional.of(it)));
          copy.withArray("traits").add(made(copy, finding, made));
        });
    return thing.map(it -> copy);
  }

  /** Whether a fact of a thing is unknown. */
  private static boolean asks(ObjectNode thing) {
    return Stream.of(FactOf.values())
        .map(it -> thing.path(it.key()))
        .anyMatch(it -> it.isString() && read(it.stringValue()).isUnknown());
  }

  private static Condition condition(JsonNode was, NewTrait made) {
    Condition found = Condition.is(made.id(), NewTrait.AS_FOUND);
    Condition usual = Condition.is(made.id(), NewTrait.AS_RECORDED);
    Condition before = was.isString() ? read(was.stringValue()) : absent(made.fact());
    if (before.isUnknown()) {
      return made.holds() ? found : usual;
    }
    return made.holds() ? before.or(found) : before.and(usual);
  }

  /** What a document means that does not say. */
  private static Condition absent(FactOf fact) {
    return switch (fact) {
      case PRESENT, FED, METAL -> Condition.always();
      case PLUGGED, BLOCKED -> Condition.never();
    };
  }

  private static Condition read(String text) {
    try {
      return Condition.of(text);
    } catch (ConditionException unreadable) {
      // The reader of documents names the place; the finding changes nothing there.
      throw new IllegalArgumentException("\"" + text + "\" is no condition", unreadable);
    }
  }

  private static ObjectNode made(ObjectNode in, Finding finding, NewTrait made) {
    ObjectNode trait = in.objectNode().put("id", made.id()).put("name", made.name());
    ArrayNode values = trait.putArray("values");
    ObjectNode usual =
        values.addObject().put("id", NewTrait.AS_RECORDED).put("words", made.usual());
    ObjectNode found = values.addObject().put("id", NewTrait.AS_FOUND).put("words", made.found());
    made.foundShare()
        .ifPresent(
            share -> {
              usual.put("share", percent(HUNDRED.subtract(share)));
              found.put("share", percent(share));
            });
    ObjectNode tell =
        trait
            .putObject("tell")
            .put("how", made.how().name().toLowerCase(Locale.ROOT).replace('_', '-'))
            .put("place", made.place());
    made.openings().forEach(tell.withArray("openings")::add);
    tell.put("effort", made.effort()).put("question", made.question());
    tell.putObject("expect")
        .put(NewTrait.AS_RECORDED, made.usualExpect())
        .put(NewTrait.AS_FOUND, made.foundExpect());
    made.tools().forEach(tell.withArray("tools")::add);
    trait.set("evidence", evidence(in, finding, Optional.empty()));
    return trait;
  }

  /** Shares that are there shrink to this many per cent of what they were; whether any is. */
  private static boolean giveWay(JsonNode values, BigDecimal left) {
    boolean shared = false;
    for (JsonNode value : values) {
      if (value instanceof ObjectNode it && it.path("share").isString()) {
        BigDecimal was = BigDecimal.valueOf(Percent.of(it.path("share").stringValue()).fraction());
        it.put("share", percent(was.multiply(left)));
        shared = true;
      }
    }
    return shared;
  }

  private static String percent(BigDecimal share) {
    return share.setScale(2, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString() + " %";
  }

  private static ObjectNode evidence(ObjectNode in, Finding finding, Optional<ObjectNode> thing) {
    String before =
        thing
            .map(it -> it.path("evidence").path("note").asString(""))
            .filter(it -> !it.isEmpty())
            .map(it -> " Before: " + it)
            .orElse("");
    ObjectNode evidence =
        in.objectNode()
            .put("how", finding.how().name().toLowerCase(Locale.ROOT))
            .put("when", finding.when())
            .put("by", finding.by())
            .put("note", finding.seen() + before);
    finding.photos().stream().findFirst().ifPresent(it -> evidence.put("photo", it.file()));
    return evidence;
  }

  /** The object whose condition speaks of a fact. */
  private static Optional<ObjectNode> holder(ObjectNode vehicle, FoundAt at, FactOf fact) {
    Optional<ObjectNode> thing =
        FactOf.of(at).contains(fact) ? thing(vehicle, at) : Optional.empty();
    if (fact != FactOf.FED) {
      return thing;
    }
    return thing.flatMap(
        slot ->
            with(vehicle.path("fuseBlocks"), "id", at.id())
                .flatMap(it -> with(it.path("sections"), "id", slot.path("section").asString(""))));
  }

  /** The object of a thing; a cavity that the connector does not list yet is listed. */
  private static Optional<ObjectNode> thing(ObjectNode vehicle, FoundAt at) {
    String part = at.part().orElse("");
    return switch (at.sort()) {
      // These hold no evidence of their own.
      case PLACE, BLOCK -> Optional.empty();
      case CONNECTOR -> with(vehicle.path("connectors"), "id", at.id());
      case GROUND -> with(vehicle.path("grounds"), "id", at.id());
      case CIRCUIT -> with(vehicle.path("circuits"), "id", at.id());
      case RUN -> with(vehicle.path("runs"), "id", at.id());
      case SLOT ->
          with(vehicle.path("fuseBlocks"), "id", at.id())
              .flatMap(it -> with(it.path("slots"), "id", part));
      case CAVITY ->
          with(vehicle.path("connectors"), "id", at.id())
              .map(
                  it ->
                      with(it.path("cavities"), "cavity", part)
                          .orElseGet(
                              () -> it.withArray("cavities").addObject().put("cavity", part)));
    };
  }

  private static Optional<ObjectNode> with(JsonNode list, String key, String value) {
    for (JsonNode one : list) {
      if (one instanceof ObjectNode node && node.path(key).asString("").equals(value)) {
        return Optional.of(node);
      }
    }
    return Optional.empty();
  }
}
