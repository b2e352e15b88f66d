package org.loomwright.planner.guide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.design.Act;
import org.loomwright.model.design.Ask;
import org.loomwright.model.design.Reading;
import org.loomwright.model.design.Shown;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.StepKind;
import org.loomwright.model.vehicle.Undo;
import org.loomwright.planner.builds.Region;

/** A step in the making, with the builds that take it. */
final class Draft {
  private final String id;
  private final StepKind kind;
  private final String place;
  private Region on;
  private String title = "";
  private String text = "";
  private String why = "";
  private List<String> openings = List.of();
  private Optional<Boolean> live = Optional.empty();
  private Optional<Ask> ask = Optional.empty();
  private Optional<Act> act = Optional.empty();
  private Undo undo = Undo.EASILY;
  private List<String> relies = List.of();
  private List<String> tools = List.of();
  private Optional<Shown> shown = Optional.empty();
  private List<Reading> readings = List.of();
  private double minutes;

  Draft(String id, StepKind kind, String place, Region on) {
    this.id = id;
    this.kind = kind;
    this.place = place;
    this.on = on;
  }

  /** Lets more builds take it. */
  void widen(Region more) {
    on = on.or(more);
  }

  Draft say(String newTitle, String newText) {
    title = newTitle;
    text = newText;
    return this;
  }

  Draft because(String reason) {
    why = reason;
    return this;
  }

  Draft behind(List<String> needed) {
    openings = List.copyOf(needed);
    return this;
  }

  Draft live(boolean power) {
    live = Optional.of(power);
    return this;
  }

  Draft asks(Ask question) {
    ask = Optional.of(question);
    return this;
  }

  Draft does(Act what, Undo how) {
    act = Optional.of(what);
    undo = how;
    return this;
  }

  Draft relies(List<String> needs) {
    relies = List.copyOf(needs);
    return this;
  }

  Draft tools(List<String> needed) {
    List<String> all = new ArrayList<>(tools);
    needed.stream().filter(it -> !all.contains(it)).forEach(all::add);
    tools = all;
    return this;
  }

  Draft shows(Optional<Shown> face) {
    shown = face;
    return this;
  }

  Draft reads(List<Reading> values) {
    readings = List.copyOf(values);
    return this;
  }

  Draft takes(double time) {
    minutes = time;
    return this;
  }

  StepKind kind() {
    return kind;
  }

  String place() {
    return place;
  }

  Optional<Act> act() {
    return act;
  }

  Undo undo() {
    return undo;
  }

  String id() {
    return id;
  }

  Region on() {
    return on;
  }

  List<String> openings() {
    return openings;
  }

  List<String> tools() {
    return tools;
  }

  double minutes() {
    return minutes;
  }

  Optional<Ask> ask() {
    return ask;
  }

  Step step(int number) {
    return new Step(
        id, number, kind, place, title, text, why, openings, live, ask, act, undo, relies, tools,
        shown, readings, minutes);
  }
}
