package org.loomwright.web.found;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.loomwright.model.finding.FactOf;
import org.loomwright.model.finding.Finding;
import org.loomwright.model.finding.FoundAt;
import org.loomwright.model.finding.IntoVehicle;
import org.loomwright.model.finding.NewTrait;
import org.loomwright.model.quantity.Percent;
import org.loomwright.model.quantity.QuantityException;
import org.loomwright.model.vehicle.Connector;
import org.loomwright.model.vehicle.FuseBlock;
import org.loomwright.model.vehicle.GroundStud;
import org.loomwright.model.vehicle.TellHow;
import org.loomwright.model.vehicle.Trait;
import org.loomwright.model.vehicle.TraitValue;
import org.loomwright.model.vehicle.Vehicle;
import org.loomwright.model.workspace.Problem;
import org.loomwright.store.Signature;
import org.loomwright.web.edit.NewId;
import tools.jackson.databind.node.ObjectNode;

/**
 * The form that takes a finding into its vehicle: as evidence, as one more value of a trait, or as
 * a new trait.
 *
 * @param typed what was typed, by field
 * @param basedOn number of the vehicle's revision when the form was opened
 * @param facts what can differ at the thing the finding concerns
 * @param reach where that thing is and what must be open to reach it
 * @param taken ids of the vehicle's traits, with those of their values
 * @param noEvidence why it can't be evidence, as a clause; empty when it can
 */
public record IntoForm(
    Map<String, String> typed,
    long basedOn,
    List<FactOf> facts,
    Reach reach,
    Map<String, Set<String>> taken,
    String noEvidence) {
  private static final String EVIDENCE = "evidence";
  private static final String VALUE = "value";
  private static final String TRAIT = "trait";
  private static final String WHAT = "what";
  private static final String REVISION = "revision";
  private static final Map<String, String> MUST =
      Map.of(
          "value-of", "choose the trait",
          "value-words", "say in a clause what these builds are, such as \"with a tipper\"",
          "value-expect", "say what is seen, read or heard on them",
          "trait-name", "name the trait, such as \"late loom\"",
          "usual", "say in a clause what builds as recorded are",
          "found", "say in a clause what builds as found are",
          "question", "say what to look at, measure or ask, as a full sentence",
          "usual-expect", "say what is seen, read or heard on builds as recorded",
          "found-expect", "say what is seen, read or heard on builds as found");

  public IntoForm {
    typed = Map.copyOf(typed);
    facts = List.copyOf(facts);
    taken = Map.copyOf(taken);
  }

  /**
   * Where a thing is.
   *
   * @param place id of its place
   * @param openings what must be open to reach it
   */
  public record Reach(String place, List<String> openings) {
    public Reach {
      openings = List.copyOf(openings);
    }

    private static Reach of(Finding finding, Vehicle vehicle) {
      return finding
          .at()
          .flatMap(it -> of(it, vehicle))
          .orElseGet(() -> new Reach(vehicle.battery(), List.of()));
    }

    private static Optional<Reach> of(FoundAt at, Vehicle vehicle) {
      return switch (at.sort()) {
        case CONNECTOR, CAVITY -> vehicle.connector(at.id()).map(Reach::of);
        case BLOCK, SLOT -> vehicle.fuseBlock(at.id()).map(Reach::of);
        case GROUND -> vehicle.ground(at.id()).map(Reach::of);
        case PLACE -> Optional.of(new Reach(at.id(), List.of()));
        case RUN ->
            vehicle.runs().stream()
                .filter(it -> it.id().equals(at.id()))
                .findFirst()
                .map(it -> new Reach(it.from(), List.of()));
        case CIRCUIT ->
            vehicle.circuits().stream()
                .filter(it -> it.id().equals(at.id()))
                .findFirst()
                .flatMap(it -> it.to().stream().findFirst())
                .map(spot -> spot.text().split(" ", -1))
                .filter(words -> words.length > 1)
                .flatMap(
                    words ->
                        vehicle
                            .connector(words[1])
                            .map(Reach::of)
                            .or(() -> vehicle.fuseBlock(words[1]).map(Reach::of)));
      };
    }

    private static Reach of(Connector it) {
      return new Reach(it.place(), it.openings());
    }

    private static Reach of(FuseBlock it) {
      return new Reach(it.place(), it.openings());
    }

    private static Reach of(GroundStud it) {
      return new Reach(it.place(), it.openings());
    }
  }

  /** The form as it is opened, with what the finding says already. */
  public static IntoForm of(Finding finding, Vehicle vehicle, long basedOn) {
    Map<String, String> typed = new LinkedHashMap<>();
    String usual = vehicle.traits().isEmpty() ? "" : VALUE;
    typed.put(WHAT, IntoVehicle.noEvidence(finding).isEmpty() ? EVIDENCE : usual);
    typed.put(REVISION, next(vehicle.revision()));
    typed.put("value-expect", finding.seen());
    typed.put("found-expect", finding.seen());
    finding.expected().ifPresent(it -> typed.put("usual-expect", it));
    typed.put("how", TellHow.LOOK.name());
    typed.put("place", Reach.of(finding, vehicle).place());
    return form(typed, basedOn, finding, vehicle);
  }

  /** The form as it was sent. */
  public static IntoForm typed(Map<String, String> sent, Finding finding, Vehicle vehicle) {
    Map<String, String> typed = new LinkedHashMap<>();
    sent.forEach((key, value) -> typed.put(key, value.strip()));
    String based = sent.getOrDefault("basedOn", "");
    return form(typed, based.matches("\\d{1,15}") ? Long.parseLong(based) : 0, finding, vehicle);
  }

  private static IntoForm form(
      Map<String, String> typed, long basedOn, Finding finding, Vehicle vehicle) {
    Map<String, Set<String>> taken = new LinkedHashMap<>();
    for (Trait trait : vehicle.traits()) {
      Set<String> values = new LinkedHashSet<>();
      trait.values().stream().map(TraitValue::id).forEach(values::add);
      taken.put(trait.id(), values);
    }
    return new IntoForm(
        typed,
        basedOn,
        finding.at().map(FactOf::of).orElse(List.of()),
        Reach.of(finding, vehicle),
        taken,
        IntoVehicle.noEvidence(finding));
  }

  /** The next revision where revisions are counted; the same text else. */
  private static String next(String revision) {
    return revision.matches("\\d{1,9}") ? Long.toString(Long.parseLong(revision) + 1) : revision;
  }

  /** What was typed into a field; empty when nothing was. */
  public String said(String field) {
    return typed.getOrDefault(field, "");
  }

  /** What the vehicle calls its revision then. */
  public String revision() {
    return said(REVISION);
  }

  /** What is wrong before anything is tried, by field. */
  public Map<String, String> wrong() {
    Map<String, String> wrong = new LinkedHashMap<>();
    if (revision().isEmpty()) {
      wrong.put(REVISION, "say what the vehicle's document calls its revision from now on");
    }
    List<String> fields =
        switch (said(WHAT)) {
          case EVIDENCE -> List.of();
          case VALUE -> List.of("value-of", "value-words", "value-expect");
          case TRAIT ->
              List.of("trait-name", "usual", "found", "question", "usual-expect", "found-expect");
          default -> {
            wrong.put(WHAT, "choose what it is");
            yield List.of();
          }
        };
    for (String field : fields) {
      if (said(field).isEmpty()) {
        wrong.put(field, MUST.getOrDefault(field, ""));
      }
    }
    if (said(WHAT).equals(EVIDENCE) && !noEvidence.isEmpty()) {
      wrong.put(WHAT, "it can't be evidence: " + noEvidence);
    }
    if (said(WHAT).equals(VALUE)) {
      share("value-share", true, wrong);
      if (!taken.containsKey(said("value-of"))) {
        wrong.put("value-of", MUST.getOrDefault("value-of", ""));
      }
    }
    if (said(WHAT).equals(TRAIT)) {
      share("found-share", false, wrong);
      if (fact().isEmpty()) {
        wrong.put("fact", "choose what is otherwise on builds as found");
      }
      if (how().isEmpty()) {
        wrong.put("how", "choose how to tell");
      }
    }
    return wrong;
  }

  private void share(String field, boolean needed, Map<String, String> wrong) {
    if (said(field).isEmpty() && !needed) {
      return;
    }
    if (percent(field).isEmpty()) {
      wrong.put(field, "write a share between 0 % and 100 %, such as 10 %");
    }
  }

  private Optional<BigDecimal> percent(String field) {
    String text = said(field);
    try {
      BigDecimal share =
          BigDecimal.valueOf(Percent.of(text.endsWith("%") ? text : text + " %").fraction())
              .movePointRight(2);
      return Optional.of(share)
          .filter(it -> it.signum() > 0 && it.compareTo(new BigDecimal(100)) < 0);
    } catch (QuantityException unreadable) {
      return Optional.empty();
    }
  }

  private Optional<TellHow> how() {
    return List.of(TellHow.values()).stream()
        .filter(it -> it.name().equals(said("how")))
        .findFirst();
  }

  /** The fact chosen, written as "PRESENT yes". */
  private Optional<FactOf> fact() {
    return facts.stream()
        .filter(it -> said("fact").equals(it + " yes") || said("fact").equals(it + " no"))
        .findFirst();
  }

  /** The vehicle with it; empty when the vehicle no longer has what it concerns. */
  public Optional<ObjectNode> into(ObjectNode vehicle, Finding finding) {
    Optional<ObjectNode> changed =
        switch (said(WHAT)) {
          case VALUE -> value(vehicle);
          case TRAIT -> IntoVehicle.trait(vehicle, finding, trait());
          default -> IntoVehicle.evidence(vehicle, finding);
        };
    return changed.map(it -> it.put(REVISION, revision()));
  }

  private Optional<ObjectNode> value(ObjectNode vehicle) {
    String trait = said("value-of");
    return IntoVehicle.value(
        vehicle,
        trait,
        NewId.of(said("value-words"), taken.getOrDefault(trait, Set.of())),
        said("value-words"),
        said("value-expect"),
        Optional.of(said("value-band")).filter(it -> !it.isEmpty()),
        percent("value-share").orElseThrow());
  }

  private NewTrait trait() {
    TellHow how = how().orElseThrow();
    boolean asked = how == TellHow.ASK_OWNER;
    return new NewTrait(
        NewId.of(said("trait-name"), taken.keySet()),
        said("trait-name"),
        said("usual"),
        said("found"),
        percent("found-share"),
        how,
        said("place").isEmpty() ? reach.place() : said("place"),
        asked ? List.of() : reach.openings(),
        asked ? "30 s" : "1 min",
        said("question"),
        said("usual-expect"),
        said("found-expect"),
        how.isReading() ? List.of("multimeter") : List.of(),
        fact().orElseThrow(),
        said("fact").endsWith(" yes"));
  }

  /** What was done, for the finding and for the history. */
  public String outcome() {
    return switch (said(WHAT)) {
      case VALUE -> "New value of a trait: " + said("value-words") + ".";
      case TRAIT -> "New trait: " + said("trait-name") + ".";
      default -> "Taken in as evidence.";
    };
  }

  /** The signature under the change of the vehicle. */
  public Signature signed(Signature by, Finding finding) {
    return by.why().isEmpty()
        ? new Signature(by.who(), "finding: " + finding.name() + ". " + outcome())
        : by;
  }

  /** Problems of the changed vehicle; none of them is at a field of this form. */
  public Map<String, String> problems(List<Problem> problems) {
    List<String> words = new ArrayList<>();
    problems.forEach(it -> words.add(it.words()));
    return Map.of("", "the vehicle would not be right: " + String.join("; ", words));
  }
}
