package org.loomwright.planner.guide;

import java.util.List;

/** All cautions, in the order in which they are said before one and the same step. */
final class CautionTable {
  /** Stands for the vehicle maker's waiting time, or for words where none is on file. */
  static final String WAIT = "{wait}";

  private static final List<CautionRule> RULES =
      List.of(
          rule(
              "general",
              "Before you start",
              "Keep to the vehicle maker's instructions and body-builder rules and to local law;"
                  + " they come before this guide. Work on systems that safety depends on, such as"
                  + " brakes, steering, restraint and lighting, is for licensed workshops."
                  + " High-voltage wiring (orange) and 48 V systems are for trained people only:"
                  + " leave them alone. This guide supports your judgement; it does not replace it."
                  + " If something does not look as described, stop.",
              CautionCause.ANY_STEP),
          rule(
              "underneath",
              "Support the vehicle before you work under it",
              "Stand it on firm, level ground, chock the wheels, and put it on stands or use a pit."
                  + " A jack alone is not a support. Secure whatever is opened above you.",
              CautionCause.UNDERNEATH),
          rule(
              "engine-bay",
              "Work in the engine bay",
              "Engine off, key out of reach, parts cold: fans start by themselves, and hot parts"
                  + " stay hot for long. Nothing loose near belts and fans.",
              CautionCause.ENGINE_BAY),
          rule(
              "high-voltage",
              "High-voltage wiring is within reach",
              "Only people trained for it work here, on a vehicle that one of them has switched off"
                  + " and secured as its maker says. Do not touch, open, move or unplug orange"
                  + " cables or anything they lead to, and lay no lead along them.",
              CautionCause.HIGH_VOLTAGE),
          rule(
              "battery",
              "Isolate the battery before you touch any wiring",
              "Ground lead off first. Keep the lead from springing back, and see to it that nobody"
                  + " connects it in between. No wiring is touched while power is on. Codes and"
                  + " clocks may be lost: note the radio code first.",
              CautionCause.ISOLATE),
          rule(
              "restraint",
              "Airbag and belt pretensioner wiring is within reach",
              WAIT
                  + " Never probe, cut, splice or unplug airbag or pretensioner wiring, keep every"
                  + " added lead away from it, and never switch power on with one of its plugs"
                  + " open.",
              CautionCause.RESTRAINT),
          rule(
              "chafing",
              "Nothing may chafe, pull or flap",
              "Lay leads along the runs given and fix them as the guide says. Protect them where"
                  + " they pass an edge, and fit a grommet in every opening in metal. A wire that"
                  + " has rubbed through can set fire to a vehicle.",
              CautionCause.LAY),
          rule(
              "heat",
              "Heat",
              "This way passes the exhaust or another hot part: let it cool before you work. Keep"
                  + " the distance given, and fix the lead so that it cannot sag towards it.",
              CautionCause.HOT_RUN),
          rule(
              "moving",
              "Moving parts",
              "The bundle bends in use, or parts move beside it: move them through their whole"
                  + " travel when the lead is fixed, and see that nothing is caught or stretched.",
              CautionCause.MOVING_RUN),
          rule(
              "pipes",
              "Brake and fuel pipes",
              "Never fix a lead to a brake or fuel pipe, and keep the distance given: a pipe must be"
                  + " free to move, and a lead must not rub on it.",
              CautionCause.PIPES),
          rule(
              "for-good",
              "Steps that can't be taken back with ordinary tools",
              "They are marked. Do not start one before every answer asked for above it has been"
                  + " found and written down.",
              CautionCause.FOR_GOOD),
          rule(
              "splice",
              "Cutting into a factory wire",
              "Make sure that it is the right wire, by place, colour and size, before you cut. Never"
                  + " splice wires of restraint systems or data lines.",
              CautionCause.SPLICE),
          rule(
              "crimp",
              "Crimps and sleeves made in the vehicle",
              "Use the tool named and pull on every crimp. Keep hot air away from trim, foam, fuel"
                  + " and airbags; let sleeves cool before you move them.",
              CautionCause.CRIMP),
          rule(
              "wet",
              "Water reaches this place",
              "Every cavity is closed by a seal or a plug, every sleeve shows adhesive at both ends,"
                  + " and leads hang in a drip loop below their connector.",
              CautionCause.WET),
          rule(
              "parked",
              "Parked leads",
              "A lead that this vehicle does not need is capped, labelled and taped back. It is"
                  + " never live: its feed end stays open or its fuse stays out.",
              CautionCause.PARK),
          rule(
              "fuses",
              "Fuses",
              "Each added feed is protected close to its source. Fit the rating printed, never a"
                  + " larger one, and only when the guide says so.",
              CautionCause.FUSE),
          rule(
              "power-on",
              "Before power comes on",
              "Look over the work once more: nobody at the wiring, no end hanging loose, all plugs of"
                  + " the vehicle in, tools out.",
              CautionCause.RECONNECT));

  private CautionTable() {}

  static List<CautionRule> rules() {
    return RULES;
  }

  private static CautionRule rule(String id, String title, String text, CautionCause cause) {
    return new CautionRule(id, title, text, List.of(cause));
  }
}
