package org.loomwright.web.map;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.loomwright.model.evidence.How;
import org.loomwright.model.quantity.Length;
import org.loomwright.model.vehicle.PlanSpot;
import org.loomwright.model.vehicle.Run;
import org.loomwright.model.vehicle.Vehicle;
import tools.jackson.databind.node.ObjectNode;

/**
 * A run that the form of the map wants to be added, as typed. Its length is never taken from the
 * drawing: the plan shows neither heights nor how a bundle really lies.
 *
 * @param from place at one end
 * @param to place at the other end
 * @param length measured length
 * @param tolerance how far that may be off
 * @param follows what it is laid along
 * @param how how the length is known
 * @param bends where its line bends
 * @param flags which of {@link #FLAGS} are set
 */
public record NewRun(
    String from,
    String to,
    String length,
    String tolerance,
    String follows,
    String how,
    String bends,
    List<String> flags) {
  /** What a run can be besides, by the key in its document. */
  public static final List<String> FLAGS =
      List.of("alongLoom", "wet", "moving", "restraint", "highVoltage");

  /** Nothing typed. */
  public static final NewRun NONE = new NewRun("", "", "", "", "", "", "", List.of());

  public NewRun {
    flags = List.copyOf(flags);
  }

  /** Ways to know a length. */
  public static List<String> ways() {
    return Stream.of(How.values()).map(it -> it.name().toLowerCase(Locale.ROOT)).toList();
  }

  static NewRun read(Function<String, Optional<String>> typed) {
    Function<String, String> text = it -> typed.apply("newRun." + it).orElse("").strip();
    return new NewRun(
        text.apply("from"),
        text.apply("to"),
        text.apply("length"),
        text.apply("tolerance"),
        text.apply("follows"),
        text.apply("how"),
        text.apply("bends"),
        FLAGS.stream().filter(it -> typed.apply("newRun." + it).isPresent()).toList());
  }

  /** Whether anything is typed; how its length is known is always chosen. */
  public boolean isWanted() {
    return !flags.isEmpty()
        || Stream.of(from, to, length, tolerance, follows, bends).anyMatch(it -> !it.isEmpty());
  }

  void add(ObjectNode tree, Vehicle vehicle, SpotReader reader, List<String> changes, String who) {
    if (!isWanted()) {
      return;
    }
    int before = reader.problems().size();
    end(vehicle, reader, "newRun.from", from);
    end(vehicle, reader, "newRun.to", to);
    if (!from.isEmpty() && from.equals(to)) {
      reader.wrong("newRun.to", to, "a run leads from one place to another one");
    }
    Optional<Length> stated =
        reader.length("newRun.length", length, "the length, measured along the real path");
    if (stated.isPresent() && stated.get().mm() <= 0) {
      reader.wrong("newRun.length", length, "the length must be more than zero");
    }
    Optional<Length> off =
        reader.length("newRun.tolerance", tolerance, "how far the true length may be off");
    if (follows.isEmpty()) {
      reader.wrong(
          "newRun.follows", "", "write what the bundle is laid along, e.g. \"the left sill\"");
    }
    if (!ways().contains(how)) {
      reader.wrong("newRun.how", how, "choose how the length is known");
    }
    Optional<List<PlanSpot>> line =
        vehicle.planView().flatMap(it -> reader.bends(it, "newRun.bends", bends));
    if (stated.isEmpty() || off.isEmpty() || reader.problems().size() > before) {
      return;
    }
    Set<String> taken = vehicle.runs().stream().map(Run::id).collect(Collectors.toSet());
    ObjectNode item = MapEdit.list(tree, "runs").addObject();
    item.put("id", NewIds.of(from + "-to-" + to, "run", taken));
    item.put("from", from).put("to", to);
    item.put("length", stated.get().text()).put("tolerance", off.get().text());
    item.put("follows", follows);
    flags.forEach(it -> item.put(it, true));
    line.filter(it -> !it.isEmpty()).ifPresent(it -> item.set("bends", MapEdit.node(tree, it)));
    ObjectNode evidence = item.putObject("evidence").put("how", how);
    if (!who.isEmpty()) {
      evidence.put("by", who);
    }
    changes.add("run " + MapEdit.ends(vehicle, from, to) + " added");
  }

  private static void end(Vehicle vehicle, SpotReader reader, String field, String place) {
    if (vehicle.place(place).isEmpty()) {
      reader.wrong(field, place, "choose the place at this end");
    }
  }
}
