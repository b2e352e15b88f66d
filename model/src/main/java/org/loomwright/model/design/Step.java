package org.loomwright.model.design;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.vehicle.Undo;

/**
 * One step of the guide.
 *
 * @param id stable id, used by edges
 * @param number printed number, 1 first
 * @param kind kind
 * @param place place id
 * @param title what to do, short
 * @param text what to do, in full
 * @param why why it matters; empty where plain
 * @param openings what must be open
 * @param live true when power must be on, false when isolated, empty when it does not matter
 * @param ask question, for an ask
 * @param act what it changes, for an act and for openings
 * @param undo how it can be taken back
 * @param relies need ids whose ways it carries out
 * @param tools tools
 * @param shown face beside it
 * @param readings values to be taken and written down
 * @param minutes expected time
 */
public record Step(
    String id,
    int number,
    StepKind kind,
    String place,
    String title,
    String text,
    String why,
    List<String> openings,
    Optional<Boolean> live,
    Optional<Ask> ask,
    Optional<Act> act,
    Undo undo,
    List<String> relies,
    List<String> tools,
    Optional<Shown> shown,
    List<Reading> readings,
    double minutes) {
  public Step {
    openings = List.copyOf(openings);
    relies = List.copyOf(relies);
    tools = List.copyOf(tools);
    readings = List.copyOf(readings);
  }
}
