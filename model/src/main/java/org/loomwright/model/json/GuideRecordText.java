package org.loomwright.model.json;

import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.loomwright.model.job.GuideRecord;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * Reads and writes the summary of a one-file guide: one JSON object that says its form and version.
 * The reader is strict, since what it reads comes back from a vehicle and may have been cut off,
 * mixed up or altered on the way.
 */
public final class GuideRecordText {
  /** What such a text says it is. */
  public static final String FORM = "loomwright guide record";

  /** The version that is read and written. */
  public static final int VERSION = 1;

  /** End of the name of a file that holds one. */
  public static final String FILE_END = ".guide-record.json";

  private static final String FORM_KEY = "form";
  private static final String VERSION_KEY = "version";
  private static final String STEPS = "steps";

  /** Far more than the longest guide gives. */
  private static final int LONGEST = 1_000_000;

  private static final Pattern PRINT = Pattern.compile("[0-9a-f]{16}");
  private static final Pattern NUMBER = Pattern.compile("-?[0-9]{1,12}(\\.[0-9]{1,12})?");
  private static final Shape.Fields SHAPE = Shape.ofRecord(Summary.class);
  private static final JsonMapper MAPPER = JsonMapper.builder().build();

  private GuideRecordText() {}

  /** What became of a text. */
  public sealed interface Result {}

  /** It is a record. */
  public record Good(GuideRecord record) implements Result {}

  /**
   * It is none.
   *
   * @param faults all that is wrong with it, at least one
   */
  public record Bad(List<Fault> faults) implements Result {
    public Bad {
      faults = List.copyOf(faults);
    }
  }

  /** The keys of the text, as far as their sort goes. */
  record Summary(
      String kit,
      String revision,
      Optional<Integer> release,
      String vehicle,
      String guide,
      Optional<String> vehicleNote,
      Optional<String> serial,
      Optional<String> partNumber,
      Optional<String> by,
      String begun,
      Optional<String> ended,
      String state,
      List<String> cases,
      Map<String, String> answers,
      Map<String, String> taken,
      Map<String, String> measured,
      Optional<String> steps,
      List<OddThing> odd) {}

  record OddThing(int step, String words) {}

  /** Reads a text. */
  public static Result read(String text) {
    if (text.length() > LONGEST) {
      return bad("", "", "this is far longer than the summary of a guide; choose another file");
    }
    String bare = text.startsWith("\ufeff") ? text.substring(1) : text;
    if (bare.isBlank()) {
      return bad("", "", "there is nothing to read; the summary of a guide is one object in { }");
    }
    JsonText.Parsed parsed = JsonText.parse(bare);
    if (parsed instanceof JsonText.Broken broken) {
      return new Bad(List.of(broken.fault()));
    }
    return tree(((JsonText.Tree) parsed).node());
  }

  private static Result tree(JsonNode node) {
    if (!node.isObject()) {
      return bad(
          "",
          Values.shown(node),
          "the summary of a guide is an object in { }, but this is " + Values.sort(node));
    }
    JsonNode form = node.path(FORM_KEY);
    if (!form.isString() || !form.stringValue().equals(FORM)) {
      return bad(
          FORM_KEY,
          form.isMissingNode() ? "" : Values.shown(form),
          "this is not the summary of a guide; that starts with \"form\": \"" + FORM + "\"");
    }
    JsonNode version = node.path(VERSION_KEY);
    if (!version.isIntegralNumber()
        || version.bigIntegerValue().intValue() != VERSION
        || version.bigIntegerValue().bitLength() > 31) {
      return bad(
          VERSION_KEY,
          version.isMissingNode() ? "" : Values.shown(version),
          "this version can't be read; this Loomwright reads version " + VERSION);
    }
    RecordBinder binder = new RecordBinder();
    Optional<Object> bound =
        binder.fields(withoutEmptySteps(node), SHAPE, "", List.of(FORM_KEY, VERSION_KEY));
    List<Fault> faults = new ArrayList<>(binder.faults());
    if (bound.isEmpty() || !faults.isEmpty()) {
      return new Bad(faults);
    }
    Optional<GuideRecord> record = record((Summary) bound.get(), faults);
    return record.isPresent() && faults.isEmpty() ? new Good(record.get()) : new Bad(faults);
  }

  /** No step done is written as an empty text, which is refused everywhere else. */
  private static JsonNode withoutEmptySteps(JsonNode node) {
    JsonNode steps = node.path(STEPS);
    return steps.isString() && steps.stringValue().isEmpty()
        ? ((ObjectNode) node.deepCopy()).without(STEPS)
        : node;
  }

  private static Optional<GuideRecord> record(Summary said, List<Fault> faults) {
    if (said.release().filter(it -> it == 0).isPresent()) {
      faults.add(
          new Fault(
              "release", "0", "releases are numbered from 1; leave it out where there is none"));
    }
    if (!PRINT.matcher(said.guide()).matches()) {
      faults.add(
          new Fault(
              "guide",
              Values.printable(said.guide()),
              "'"
                  + Values.printable(said.guide())
                  + "' is no fingerprint of a guide; that has 16 digits 0 to 9 and a to f"));
    }
    Optional<Instant> begun = moment("begun", said.begun(), faults);
    Optional<Instant> ended = said.ended().flatMap(it -> moment("ended", it, faults));
    Optional<GuideRecord.State> state = state(said.state(), faults);
    state.ifPresent(it -> end(it, said, faults));
    if (begun.isPresent() && ended.isPresent() && ended.get().isBefore(begun.get())) {
      faults.add(
          new Fault(
              "ended", said.ended().orElse(""), "it ended before it was begun, " + begun.get()));
    }
    if (new LinkedHashSet<>(said.cases()).size() < said.cases().size()) {
      faults.add(
          new Fault(
              "cases", String.join(", ", said.cases()), "a case stands twice; once is enough"));
    }
    said.measured()
        .forEach((trait, number) -> number(Paths.key("measured", trait), number, faults));
    List<Integer> steps = said.steps().map(it -> steps(it, faults)).orElse(List.of());
    for (int i = 0; i < said.odd().size(); i++) {
      if (said.odd().get(i).step() == 0) {
        faults.add(new Fault(Paths.item("odd", i) + ".step", "0", "steps are numbered from 1"));
      }
    }
    if (begun.isEmpty() || state.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new GuideRecord(
            said.kit(),
            said.revision(),
            said.release(),
            said.vehicle(),
            said.guide(),
            said.vehicleNote(),
            said.serial(),
            said.partNumber(),
            said.by(),
            begun.get(),
            ended,
            state.get(),
            said.cases(),
            said.answers(),
            said.taken(),
            said.measured(),
            steps,
            said.odd().stream().map(it -> new GuideRecord.Odd(it.step(), it.words())).toList()));
  }

  private static Optional<Instant> moment(String key, String text, List<Fault> faults) {
    try {
      return Optional.of(Instant.parse(text));
    } catch (DateTimeParseException refusal) {
      faults.add(
          new Fault(
              key,
              Values.printable(text),
              "'"
                  + Values.printable(text)
                  + "' is no time; write day and time in UTC, such as 2026-11-26T09:12:00Z"));
      return Optional.empty();
    }
  }

  private static Optional<GuideRecord.State> state(String word, List<Fault> faults) {
    Optional<GuideRecord.State> state =
        Arrays.stream(GuideRecord.State.values()).filter(it -> it.word().equals(word)).findFirst();
    if (state.isEmpty()) {
      List<String> words =
          Arrays.stream(GuideRecord.State.values()).map(GuideRecord.State::word).toList();
      faults.add(
          new Fault(
              "state",
              Values.printable(word),
              "'"
                  + Values.printable(word)
                  + "' is not known here"
                  + Nearest.fullHint(word, "the words are", words)));
    }
    return state;
  }

  private static void end(GuideRecord.State state, Summary said, List<Fault> faults) {
    boolean goesOn = state == GuideRecord.State.UNDER_WAY;
    if (goesOn == said.ended().isPresent()) {
      faults.add(
          new Fault(
              "ended",
              said.ended().orElse(""),
              goesOn
                  ? "a guide that is under way has not ended; leave this out"
                  : "a guide that was " + state.word() + " says when; the key 'ended' is missing"));
    }
  }

  private static void number(String path, String text, List<Fault> faults) {
    if (!isNumber(text)) {
      faults.add(new Fault(path, Values.printable(text), noNumber(text)));
    }
  }

  /** Whether a text is a number as records write it: digits, with a point where it has decimals. */
  public static boolean isNumber(String text) {
    return NUMBER.matcher(text).matches();
  }

  /** What is wrong with a text that is no number. */
  public static String noNumber(String text) {
    return "'"
        + Values.printable(text)
        + "' is no number; write digits with a point before decimals and no unit, such as 12.6";
  }

  private static List<Integer> steps(String text, List<Fault> faults) {
    try {
      return StepNumbers.read(text);
    } catch (IllegalArgumentException refusal) {
      faults.add(new Fault(STEPS, Values.printable(text), String.valueOf(refusal.getMessage())));
      return List.of();
    }
  }

  private static Bad bad(String path, String value, String message) {
    return new Bad(List.of(new Fault(path, value, message)));
  }

  /** The record as compact text: the same for the file and for the code that is scanned. */
  public static String write(GuideRecord record) {
    Map<String, Object> tree = new LinkedHashMap<>();
    tree.put(FORM_KEY, FORM);
    tree.put(VERSION_KEY, VERSION);
    tree.put("kit", record.kit());
    tree.put("revision", record.revision());
    record.release().ifPresent(it -> tree.put("release", it));
    tree.put("vehicle", record.vehicle());
    tree.put("guide", record.guide());
    record.vehicleNote().ifPresent(it -> tree.put("vehicleNote", it));
    record.serial().ifPresent(it -> tree.put("serial", it));
    record.partNumber().ifPresent(it -> tree.put("partNumber", it));
    record.by().ifPresent(it -> tree.put("by", it));
    tree.put("begun", record.begun().toString());
    record.ended().ifPresent(it -> tree.put("ended", it.toString()));
    tree.put("state", record.state().word());
    tree.put("cases", record.cases());
    tree.put("answers", record.answers());
    tree.put("taken", record.taken());
    if (!record.measured().isEmpty()) {
      tree.put("measured", record.measured());
    }
    tree.put(STEPS, StepNumbers.write(record.steps()));
    tree.put(
        "odd",
        record.odd().stream()
            .map(
                it -> {
                  Map<String, Object> odd = new LinkedHashMap<>();
                  odd.put("step", it.step());
                  odd.put("words", it.words());
                  return odd;
                })
            .toList());
    return MAPPER.writeValueAsString(tree);
  }
}
