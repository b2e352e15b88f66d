package org.loomwright.planner.landing;

/** Where a lead ends, before its wire and therefore its end parts are chosen. */
public sealed interface Touch {
  /** Place of the end. */
  String place();

  /** Name that is equal exactly when two leads would want the same spot. */
  String key();

  /** A cavity of a connector of the vehicle. */
  record AtCavity(String connector, String cavity, String place) implements Touch {
    @Override
    public String key() {
      return "cavity " + connector + " " + cavity;
    }
  }

  /**
   * A cavity of a housing the kit brings.
   *
   * @param mount "EQUIPMENT/PLUG"
   * @param housing housing part
   */
  record AtHousing(String mount, String housing, String cavity, String place) implements Touch {
    @Override
    public String key() {
      return "housing " + mount + " " + cavity;
    }
  }

  /** The load blade of a slot. */
  record AtSlot(String block, String slot, String place) implements Touch {
    @Override
    public String key() {
      return "slot " + block + " " + slot;
    }
  }

  /** A ground stud. */
  record AtGround(String ground, String place) implements Touch {
    @Override
    public String key() {
      return "ground " + ground;
    }
  }

  /** A splice into a factory circuit. */
  record AtCircuit(String circuit, String place) implements Touch {
    @Override
    public String key() {
      return "circuit " + circuit + " at " + place;
    }
  }

  /** Nothing: capped, labelled and taped back. Any number of ends may lie so at a place. */
  record AtLoose(String place) implements Touch {
    @Override
    public String key() {
      return "loose " + place;
    }
  }

  /**
   * A joint of added leads.
   *
   * @param joint name of the sharing group
   */
  record AtJoint(String joint, String place) implements Touch {
    @Override
    public String key() {
      return "joint " + joint + " at " + place;
    }
  }
}
