package org.loomwright.model.finding;

import java.util.List;

/** What of a thing turned out to be otherwise on some builds. */
public enum FactOf {
  /** Whether a circuit or connector is there. */
  PRESENT("presentWhen", "it is there"),
  /** Whether the section of a slot is fed. */
  FED("fedWhen", "its section is fed"),
  /** Whether a slot has its metal. */
  METAL("metalWhen", "it has its metal"),
  /** Whether a cavity holds a seal plug. */
  PLUGGED("pluggedWhen", "it holds a seal plug"),
  /** Whether a cavity is not moulded through. */
  BLOCKED("blockedWhen", "it is blocked");

  private final String key;
  private final String words;

  FactOf(String key, String words) {
    this.key = key;
    this.words = words;
  }

  /** Key of the condition in the vehicle's document. */
  String key() {
    return key;
  }

  /** A clause, e.g. "it is there". */
  public String words() {
    return words;
  }

  /** What can be otherwise at a thing; nothing where no condition speaks of it. */
  public static List<FactOf> of(FoundAt at) {
    return switch (at.sort()) {
      case CIRCUIT, CONNECTOR -> List.of(PRESENT);
      case SLOT -> List.of(FED, METAL);
      case CAVITY -> List.of(PLUGGED, BLOCKED);
      case PLACE, BLOCK, GROUND, RUN -> List.of();
    };
  }
}
