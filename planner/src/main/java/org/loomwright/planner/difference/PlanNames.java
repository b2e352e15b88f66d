package org.loomwright.planner.difference;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.loomwright.model.design.Bundle;
import org.loomwright.model.design.Case;
import org.loomwright.model.design.Landing;
import org.loomwright.model.design.Lead;
import org.loomwright.model.design.NeedGap;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.SuppliedHousing;
import org.loomwright.model.design.WayLine;
import org.loomwright.model.kit.Mount;

/** Names for people as far as a plan carries them; what it has no name of stands by its id. */
final class PlanNames {
  private static final Pattern NEED = Pattern.compile("^(.*) \\(pin [^()]*\\): (.*)$");
  private static final Pattern SLOT_ID = Pattern.compile("slot (\\S+) (\\S+?)(?:,.*)?$");
  private static final Pattern SLOT_WORDS = Pattern.compile("slot \\S+ of ([^,]+)");
  private static final Pattern STUD_ID = Pattern.compile("stud (\\S+?)(?:,.*)?$");
  private static final Pattern SPLICE_ID = Pattern.compile("splice (\\S+) at (\\S+?)(?:,.*)?$");

  private static final Pattern CAVITY = Pattern.compile("ends in cavity \\S+ of ([^,]+)");

  private final Map<String, String> needs = new LinkedHashMap<>();
  private final Map<String, String> full = new LinkedHashMap<>();
  private final Map<String, String> demands = new LinkedHashMap<>();
  private final Map<String, String> things = new LinkedHashMap<>();
  private final Map<String, WayLine> ways = new LinkedHashMap<>();

  PlanNames(Plan plan) {
    for (SuppliedHousing housing : plan.design().housings()) {
      String mate = housing.matesWith();
      int of = mate.indexOf(" of ");
      things.put(
          housing.id(), "the kit's housing for the " + (of < 0 ? mate : mate.substring(0, of)));
    }
    plan.gap().forEach(this::need);
    plan.kit().mounts().forEach(mount -> connector(plan, mount));
    Map<String, List<NeedGap>> byEquipment =
        plan.gap().stream()
            .collect(
                Collectors.groupingBy(
                    it -> equipment(it.need()), LinkedHashMap::new, Collectors.toList()));
    byEquipment.values().forEach(this::shorten);
    for (WayLine way : plan.ways()) {
      ways.put(way.id(), way);
      name(way);
    }
  }

  /** A need's reason names the connector its plug is mounted on. */
  private void connector(Plan plan, Mount mount) {
    String start = mount.equipment() + "/" + mount.plug() + "/";
    mount
        .connector()
        .ifPresent(
            id ->
                plan.gap().stream()
                    .filter(gap -> gap.need().startsWith(start))
                    .flatMap(gap -> gap.parts().stream())
                    .map(part -> CAVITY.matcher(part.reason()))
                    .filter(Matcher::find)
                    .findFirst()
                    .ifPresent(found -> things.put(id, found.group(1))));
  }

  private void need(NeedGap gap) {
    Matcher found = NEED.matcher(gap.words());
    String name = found.matches() ? found.group(1) : gap.words();
    needs.put(gap.need(), name);
    full.put(gap.need(), name);
    demands.put(gap.need(), found.matches() ? found.group(2) : gap.words());
  }

  /** Leaves out the equipment's name where all needs of it start with it. */
  private void shorten(List<NeedGap> gaps) {
    List<String> full = gaps.stream().map(it -> needs.getOrDefault(it.need(), "")).toList();
    String start = full.get(0);
    for (String one : full) {
      int same = 0;
      while (same < Math.min(one.length(), start.length())
          && one.charAt(same) == start.charAt(same)) {
        same++;
      }
      start = start.substring(0, same);
    }
    String common = full.size() > 1 ? start : full.get(0);
    int cut = common.lastIndexOf(", ");
    List<String> bare = full.stream().map(it -> cut < 0 ? it : it.substring(cut + 2)).toList();
    for (int i = 0; i < gaps.size(); i++) {
      String name = bare.get(i);
      if (!needs.containsValue(name)) {
        needs.put(gaps.get(i).need(), name);
      }
    }
  }

  private static String equipment(String need) {
    return need.substring(0, Math.max(0, need.indexOf('/')));
  }

  private void name(WayLine way) {
    Matcher slot = SLOT_ID.matcher(way.id());
    Matcher slotWords = SLOT_WORDS.matcher(way.words());
    if (slot.find() && slotWords.find()) {
      things.put(slot.group(1), slotWords.group(1));
    }
    Matcher stud = STUD_ID.matcher(way.id());
    if (stud.find() && way.words().startsWith("ground on ")) {
      things.put(stud.group(1), way.words().substring("ground on ".length()));
    }
    Matcher splice = SPLICE_ID.matcher(way.id());
    int at = way.words().lastIndexOf(" at ");
    if (splice.find() && way.words().startsWith("splice into ") && at > 0) {
      things.put(splice.group(1), way.words().substring("splice into ".length(), at));
    }
  }

  /** The pin's name, without the equipment's where that is clear. */
  String needName(String id) {
    return needs.getOrDefault(id, id);
  }

  /** Words about needs with the needs' names as short as they are said elsewhere. */
  String brief(String words) {
    String brief = words;
    for (Map.Entry<String, String> need : full.entrySet()) {
      String name = needName(need.getKey());
      String pin = need.getKey().substring(need.getKey().lastIndexOf('/') + 1);
      brief = brief.replace(need.getValue() + " (pin " + pin + ")", name);
      brief = brief.replace(need.getValue(), name);
    }
    return brief;
  }

  List<String> needNames(List<String> ids) {
    return ids.stream().map(this::needName).toList();
  }

  /** What a need asks for, e.g. "supply 30, 12.5 A". */
  String demand(String id) {
    return demands.getOrDefault(id, "");
  }

  Optional<WayLine> way(String id) {
    return Optional.ofNullable(ways.get(id));
  }

  /** The way in words. */
  String wayWords(String id) {
    return way(id).map(WayLine::words).orElse(id);
  }

  /** "case A2 (with section B dead)". */
  static String named(Case one) {
    return "case " + one.id() + " (" + Words.cut(one.words()) + ")";
  }

  /** "case A1" or "cases A1 and A2". */
  static String cases(List<String> ids) {
    return (ids.size() == 1 ? "case " : "cases ") + Words.list(ids);
  }

  /** "L3 heater ground". */
  static String lead(Lead lead) {
    return lead.id() + " " + lead.what();
  }

  static String bundle(Bundle bundle) {
    return "the bundle on run " + bundle.run();
  }

  /** Where a landing is, by ids alone, for telling whether two are the same. */
  static String spot(Landing landing) {
    if (landing instanceof Landing.InCavity it) {
      return "cavity " + it.connector() + " " + it.cavity();
    } else if (landing instanceof Landing.InHousing it) {
      return "housing " + it.housing() + " " + it.cavity();
    } else if (landing instanceof Landing.InSlot it) {
      return "slot " + it.block() + " " + it.slot();
    } else if (landing instanceof Landing.OnGround it) {
      return "ground " + it.ground();
    } else if (landing instanceof Landing.IntoCircuit it) {
      return "circuit " + it.circuit() + " " + it.place();
    } else if (landing instanceof Landing.InJoint) {
      return "joint";
    }
    return "parked";
  }

  /** Where a landing is, in words. */
  String landing(Landing landing) {
    if (landing instanceof Landing.InCavity it) {
      return "cavity "
          + it.cavity()
          + " of "
          + things.getOrDefault(it.connector(), "connector " + it.connector());
    } else if (landing instanceof Landing.InHousing it) {
      return "cavity " + it.cavity() + " of " + things.getOrDefault(it.housing(), it.housing());
    } else if (landing instanceof Landing.InSlot it) {
      return "slot " + it.slot() + " of " + things.getOrDefault(it.block(), it.block());
    } else if (landing instanceof Landing.OnGround it) {
      return things.getOrDefault(it.ground(), "ground " + it.ground());
    } else if (landing instanceof Landing.IntoCircuit it) {
      return "a splice in " + things.getOrDefault(it.circuit(), "circuit " + it.circuit());
    } else if (landing instanceof Landing.InJoint it) {
      return "joint " + it.joint();
    }
    return "a parked end";
  }
}
