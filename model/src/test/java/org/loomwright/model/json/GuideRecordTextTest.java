package org.loomwright.model.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.loomwright.model.job.GuideRecord;

class GuideRecordTextTest {
  private static final String GOOD =
      """
      {"form": "loomwright guide record", "version": 1, "kit": "crew-comfort", "revision": "B",
       "release": 2, "vehicle": "van", "guide": "0123456789abcdef", "vehicleNote": "plate ends in 17",
       "serial": "CC-0042", "partNumber": "CC-2", "by": "M. Orr", "begun": "2026-11-26T09:12:00Z",
       "ended": "2026-11-26T13:40:05Z", "state": "finished", "cases": ["A1", "B2"],
       "answers": {"body": "panel"},
       "taken": {"rest-voltage": "12.6", "works/heater": "yes", "faults-before": "none"},
       "measured": {"rear-feed": "12.4"}, "steps": "1-12,14",
       "odd": [{"step": 14, "words": "the plug was grey"}]}
      """;

  private static GuideRecord good(String text) {
    GuideRecordText.Result result = GuideRecordText.read(text);
    assertThat(result).isInstanceOf(GuideRecordText.Good.class);
    return ((GuideRecordText.Good) result).record();
  }

  private static List<Fault> faults(String text) {
    return GuideRecordText.read(text) instanceof GuideRecordText.Bad bad ? bad.faults() : List.of();
  }

  @Test
  void everyKeyIsRead() {
    GuideRecord record = good(GOOD);
    assertThat(record.kit()).isEqualTo("crew-comfort");
    assertThat(record.revision()).isEqualTo("B");
    assertThat(record.release()).contains(2);
    assertThat(record.vehicle()).isEqualTo("van");
    assertThat(record.guide()).isEqualTo("0123456789abcdef");
    assertThat(record.vehicleNote()).contains("plate ends in 17");
    assertThat(record.serial()).contains("CC-0042");
    assertThat(record.partNumber()).contains("CC-2");
    assertThat(record.by()).contains("M. Orr");
    assertThat(record.begun()).isEqualTo(Instant.parse("2026-11-26T09:12:00Z"));
    assertThat(record.ended()).contains(Instant.parse("2026-11-26T13:40:05Z"));
    assertThat(record.state()).isEqualTo(GuideRecord.State.FINISHED);
    assertThat(record.cases()).containsExactly("A1", "B2");
    assertThat(record.answers()).isEqualTo(Map.of("body", "panel"));
    assertThat(record.taken()).hasSize(3).containsEntry("rest-voltage", "12.6");
    assertThat(record.measured()).isEqualTo(Map.of("rear-feed", "12.4"));
    assertThat(record.steps()).hasSize(13).contains(1, 12, 14).doesNotContain(13);
    assertThat(record.odd()).containsExactly(new GuideRecord.Odd(14, "the plug was grey"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          "loomwright guide record" | "shopping list" | form | is not the summary of a guide
          "version": 1 | "version": 2 | version | this Loomwright reads version 1
          "version": 1 | "version": 4294967297 | version | this Loomwright reads version 1
          "version": 1 | "version": "1" | version | this Loomwright reads version 1
          "kit": "crew-comfort" | "kit": 5 | kit | a number stands here, but it must be text
          "kit": "crew-comfort", | | kit | the key 'kit' is missing
          "serial" | "serail" | serail | 'serail' is not a key of a summary; did you mean 'serial'?
          "release": 2 | "release": 0 | release | numbered from 1
          "release": 2 | "release": 1.5 | release | a whole number
          0123456789abcdef | 0123456789ABCDEF | guide | is no fingerprint of a guide
          "2026-11-26T09:12:00Z" | "26.11.2026" | begun | is no time; write day and time in UTC
          "2026-11-26T13:40:05Z" | "2026-11-26T08:00:00Z" | ended | ended before it was begun
          "finished" | "done" | state | 'done' is not known here
          "finished" | "under way" | ended | is under way has not ended
          "ended": "2026-11-26T13:40:05Z", | | ended | the key 'ended' is missing
          ["A1", "B2"] | ["A1", "A1"] | cases | a case stands twice
          "rear-feed": "12.4" | "rear-feed": "12,4" | measured.rear-feed | a point before decimals
          "rear-feed": "12.4" | "rear-feed": 12.4 | measured.rear-feed | it must be text
          "rear-feed": "12.4" | "rear-feed": "NaN" | measured.rear-feed | is no number
          "1-12,14" | "12-1" | steps | does not follow
          "1-12,14" | "1-12,12" | steps | each step stands once
          "1-12,14" | "0-3" | steps | is no number of a step
          "1-12,14" | "1-999999999" | steps | is no number of a step
          "step": 14 | "step": 0 | odd[0].step | numbered from 1
          "words": "the plug was grey" | "words": " " | odd[0].words | the text is empty
          """)
  void whatIsWrongIsSaidWithItsKey(String old, String now, String path, String words) {
    assertThat(GOOD).contains(old);
    List<Fault> faults = faults(GOOD.replace(old, now == null ? "" : now));
    assertThat(faults).hasSize(1);
    assertThat(faults.get(0).path()).isEqualTo(path);
    assertThat(faults.get(0).message()).contains(words);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"", " ", "{", "[]", "null", "12", "\"text\"", "{}", "WIFI:S:shop;;", "\u0000"})
  void otherTextsAreRefused(String text) {
    assertThat(faults(text)).hasSize(1);
  }

  @Test
  void aTextThatWasCutOffAnywhereIsRefused() {
    String text = GOOD.strip();
    for (int end = 0; end < text.length(); end++) {
      assertThat(faults(text.substring(0, end))).as("cut at %s", end).isNotEmpty();
    }
  }

  @Test
  void aMarkAtItsStartAndNothingDoneAreFine() {
    assertThat(good("\ufeff" + GOOD)).isEqualTo(good(GOOD));
    assertThat(good(GOOD.replace("1-12,14", "")).steps()).isEmpty();
  }

  /** Whatever a fitter did, the program reads it back as it was. */
  @Property(tries = 500)
  void whatIsWrittenIsReadAgain(@ForAll long seed) {
    GuideRecord record = random(new Random(seed));
    String text = GuideRecordText.write(record);
    assertThat(good(text)).isEqualTo(record);
    assertThat(GuideRecordText.write(good(text))).isEqualTo(text);
    assertThat(text).startsWith("{\"form\":\"loomwright guide record\",\"version\":1,\"kit\":");
  }

  /** One character changed is read as something else or refused; it never fails in another way. */
  @Property(tries = 500)
  void damageIsRefusedOrRead(@ForAll long seed) {
    Random random = new Random(seed);
    StringBuilder text = new StringBuilder(GuideRecordText.write(random(random)));
    int at = random.nextInt(text.length());
    text.setCharAt(at, (char) (32 + random.nextInt(95)));
    GuideRecordText.Result result = GuideRecordText.read(text.toString());
    if (result instanceof GuideRecordText.Bad bad) {
      assertThat(bad.faults()).isNotEmpty().allMatch(it -> !it.message().isBlank());
    } else {
      GuideRecord read = ((GuideRecordText.Good) result).record();
      assertThat(good(GuideRecordText.write(read))).isEqualTo(read);
    }
  }

  static GuideRecord random(Random random) {
    GuideRecord.State state = GuideRecord.State.values()[random.nextInt(3)];
    Instant begun = Instant.ofEpochMilli(1_700_000_000_000L + random.nextInt());
    List<Integer> steps = new ArrayList<>();
    for (int number = 1; number < 120; number++) {
      if (random.nextInt(3) > 0) {
        steps.add(number);
      }
    }
    List<GuideRecord.Odd> odd = new ArrayList<>();
    for (int i = random.nextInt(3); i > 0; i--) {
      odd.add(new GuideRecord.Odd(1 + random.nextInt(120), words(random)));
    }
    Map<String, String> measured = new LinkedHashMap<>();
    entries(random).forEach((key, value) -> measured.put(key, "" + random.nextInt(400) / 8.0));
    return new GuideRecord(
        words(random),
        words(random),
        maybe(random, 1 + random.nextInt(50)),
        words(random),
        String.format("%016x", random.nextLong()),
        maybe(random, words(random)),
        maybe(random, words(random)),
        maybe(random, words(random)),
        maybe(random, words(random)),
        begun,
        state == GuideRecord.State.UNDER_WAY
            ? Optional.empty()
            : Optional.of(begun.plusSeconds(random.nextInt(90_000))),
        state,
        List.copyOf(entries(random).keySet()),
        entries(random),
        entries(random),
        measured,
        steps,
        odd);
  }

  private static <T> Optional<T> maybe(Random random, T value) {
    return random.nextBoolean() ? Optional.of(value) : Optional.empty();
  }

  private static Map<String, String> entries(Random random) {
    Map<String, String> entries = new LinkedHashMap<>();
    for (int i = random.nextInt(5); i > 0; i--) {
      entries.put(words(random), words(random));
    }
    return entries;
  }

  private static String words(Random random) {
    String letters = "abz09 \"\\/{},:\n\tÄµΩ²€\u2028\ud83d\ude90";
    StringBuilder words = new StringBuilder("w");
    int[] points = letters.codePoints().toArray();
    for (int i = random.nextInt(9); i > 0; i--) {
      words.appendCodePoint(points[random.nextInt(points.length)]);
    }
    return words.toString();
  }
}
