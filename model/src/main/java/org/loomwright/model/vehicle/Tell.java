package org.loomwright.model.vehicle;

import java.util.List;
import java.util.Map;
import org.loomwright.model.quantity.TimeSpan;

/**
 * How to tell the values of a trait apart on the real vehicle.
 *
 * @param how kind of observation
 * @param place where it is made
 * @param openings what must be open to make it
 * @param effort time it takes once open
 * @param question what to look at, measure or ask, as a full sentence
 * @param expect value id to what is seen, read or heard for that value
 * @param tools tools needed
 * @param bands of a measurement: value id to where the meter reads for that value, such as "11.5 V
 *     or more"; for every value, without common numbers, or for none
 */
public record Tell(
    TellHow how,
    String place,
    List<String> openings,
    TimeSpan effort,
    String question,
    Map<String, String> expect,
    List<String> tools,
    Map<String, MeterBand> bands) {
  public Tell {
    openings = List.copyOf(openings);
    expect = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(expect));
    tools = List.copyOf(tools);
    bands = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(bands));
  }

  /** One that says in words alone what to expect. */
  public Tell(
      TellHow how,
      String place,
      List<String> openings,
      TimeSpan effort,
      String question,
      Map<String, String> expect,
      List<String> tools) {
    this(how, place, openings, effort, question, expect, tools, Map.of());
  }
}
