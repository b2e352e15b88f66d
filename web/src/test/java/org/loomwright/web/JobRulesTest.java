package org.loomwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.model.design.Step;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.Taken;
import org.loomwright.model.json.DocumentBinder;
import org.loomwright.model.json.JsonText;
import org.loomwright.web.job.DemoJobs;

/** What stops a job: values that lie outside, cautions not read, power, a wrong part number. */
class JobRulesTest {
  private static final String SHORT = "measure/short/rear-block/F7";

  @TempDir private static Path folder;
  private static DemoStore store;
  private static DemoJobs jobs;
  private static Browser browser;

  @BeforeAll
  static void open() {
    store = DemoStore.in(folder);
    jobs = DemoJobs.in(store.store());
    browser = new Browser(store.pages());
  }

  @AfterAll
  static void close() {
    store.close();
  }

  private static HttpResponse<String> post(String path, String... fields) {
    return post(Map.of("who", "Ben Ortega"), path, fields);
  }

  private static HttpResponse<String> post(
      Map<String, String> more, String path, String... fields) {
    Map<String, String> all = new LinkedHashMap<>(more);
    for (int i = 0; i < fields.length; i += 2) {
      all.put(fields[i], fields[i + 1]);
    }
    String form =
        all.entrySet().stream()
            .map(it -> encoded(it.getKey()) + "=" + encoded(it.getValue()))
            .collect(Collectors.joining("&"));
    return browser.post(path, form);
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  private static Job job(String id) {
    if (JsonText.parse(store.text(DemoJobs.key(id))) instanceof JsonText.Tree tree
        && DocumentBinder.bind(tree.node()).good().orElse(null) instanceof Job job) {
      return job;
    }
    throw new AssertionError(store.text(DemoJobs.key(id)));
  }

  private static String number(String id) {
    return Long.toString(store.number(DemoJobs.key(id)));
  }

  private static void ready(String id) {
    for (int i = 0; i < 1200; i++) {
      if (!browser.get("/job/" + id).body().contains("The kit is being planned")) {
        return;
      }
      try {
        Thread.sleep(100);
      } catch (InterruptedException stopped) {
        Thread.currentThread().interrupt();
      }
    }
    throw new AssertionError(id + " was still being planned");
  }

  private static HttpResponse<String> tick(String id, String step) {
    return post("/job/" + id + "/tick", "step", step, "basedOn", number(id), "done", "yes");
  }

  private static HttpResponse<String> take(String id, String step, String reading, String value) {
    return post(
        "/job/" + id + "/take", "step", step, "basedOn", number(id), "value." + reading, value);
  }

  private static HttpResponse<String> reason(String id, String step, String reading, String why) {
    return post("/job/" + id + "/reason", "step", step, "reading", reading, "reason", why);
  }

  private static HttpResponse<String> answer(String id, String trait, String... fields) {
    Map<String, String> more = new LinkedHashMap<>(Map.of("who", "Ben Ortega"));
    more.put("question", question(trait));
    more.put("basedOn", number(id));
    return post(more, "/job/" + id + "/survey", fields);
  }

  private static String question(String trait) {
    return jobs.plan().guide().steps().stream()
        .filter(it -> it.ask().filter(ask -> ask.trait().equals(trait)).isPresent())
        .map(it -> Integer.toString(it.number()))
        .findFirst()
        .orElseThrow();
  }

  private static void assertKept(HttpResponse<String> answer) {
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(303);
  }

  private static void assertRefused(HttpResponse<String> answer, String why) {
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body().replaceAll("\\s+", " ")).contains("Not saved").contains(why);
  }

  private static int at(String step) {
    return jobs.way().stream().map(Step::id).toList().indexOf(step);
  }

  @Test
  void aShortKeepsTheFuseOut() {
    jobs.underWay("short", at(SHORT));
    ready("short");
    String reading = SHORT.substring("measure/".length());
    assertRefused(tick("short", SHORT), "write the values down first");
    assertRefused(reason("short", SHORT, reading, "no meter"), "no such value");
    assertKept(take("short", SHORT, reading, "0.2"));
    assertRefused(tick("short", SHORT), "lies outside; put it right and take the value again");
    assertRefused(reason("short", SHORT, reading, "it will be fine"), "no such value");
    String page = browser.get("/job/short/steps").body();
    assertThat(page)
        .contains("Leave the fuse out", "Do not go on before it is put right and taken again")
        .doesNotContain("name=\"done\" value=\"yes\"", "A value has to stay outside");
    String note = jobs.way().get(at(SHORT)).readings().get(0).name() + ": 0.2 k\u03a9";
    assertKept(post("/job/short/otherwise", "step", SHORT, "was", note, "why", "it will be fine"));
    assertRefused(tick("short", SHORT), "lies outside");
    String fuse = jobs.way().get(at(SHORT) + 2).id();
    assertThat(fuse).startsWith("fuse/");
    assertRefused(tick("short", fuse), "first comes steps");
    assertKept(take("short", SHORT, reading, "200"));
    assertKept(tick("short", SHORT));
    assertKept(tick("short", jobs.way().get(at(SHORT) + 1).id()));
    assertKept(take("short", SHORT, reading, "0.2"));
    assertRefused(tick("short", fuse), "first comes step");
    assertThat(browser.get("/job/short/steps").body()).contains("Leave the fuse out");
    assertThat(browser.get("/job/short/sign").body())
        .contains("0.2 k\u03a9 lies outside; it has to be put right");
    assertKept(take("short", SHORT, reading, "200"));
    assertKept(tick("short", fuse));
  }

  @Test
  void aValueOutsideNeedsItsReasonBeforeTheStepIsDone() {
    String rest = "measure/rest";
    jobs.underWay("weak", at(rest));
    ready("weak");
    assertKept(take("weak", rest, "rest-voltage", "11.9"));
    assertKept(take("weak", rest, "key-off-before", "20"));
    assertRefused(tick("weak", rest), "or give the reason below");
    assertRefused(reason("weak", rest, "rest-voltage", " "), "write why it may stay so");
    assertThat(job("weak").deviations()).isEmpty();
    String note = "battery rest voltage: 11.9 V";
    assertKept(post("/job/weak/otherwise", "step", rest, "was", note));
    assertRefused(tick("weak", rest), "or give the reason below");
    assertRefused(post("/job/weak/otherwise", "step", rest, "was", note), "noted here already");
    assertKept(reason("weak", rest, "rest-voltage", "charged over night"));
    assertThat(job("weak").deviations()).hasSize(1);
    assertThat(job("weak").deviations().get(0).why()).contains("charged over night");
    assertKept(tick("weak", rest));
    assertKept(take("weak", rest, "rest-voltage", "11.2"));
    assertThat(browser.get("/job/weak").body()).contains("Measure the battery");
    assertKept(take("weak", rest, "rest-voltage", "12.6"));
    assertThat(browser.get("/job/weak/steps?step=4").body()).contains("\u2713 done");
  }

  @Test
  void numbersBelowZeroAreSwappedLeads() {
    jobs.underWay("swapped", at("measure/drop")).survey("probes");
    ready("swapped");
    assertRefused(take("swapped", "measure/rest", "rest-voltage", "-12.6"), "leads of the meter");
    assertRefused(take("swapped", "measure/rest", "key-off-before", "\u221220 mA"), "below zero");
    assertRefused(
        take("swapped", "measure/drop", "drop-feed/heater/main/1", "-0.1"), "leads of the meter");
    assertKept(take("swapped", "measure/drop", "drop-feed/heater/main/1", "-0"));
    assertKept(answer("probes", "tow-prep", "value", "no"));
    HttpResponse<String> below = answer("probes", "rear-feed", "number", "-12.1", "power", "on");
    assertRefused(below, "leads of the meter are swapped");
    assertThat(job("probes").answers()).doesNotContainKey("rear-feed");
  }

  @Test
  void anotherPartNumberStopsTheWork() {
    List<String> numbers = jobs.plan().design().partNumbers().stream().map(it -> it.id()).toList();
    jobs.underWay("wrong", at("act/isolate"));
    ready("wrong");
    assertThat(browser.get("/job/wrong/sign").body()).doesNotContain("does not serve");
    assertKept(answer("wrong", "rear-feed", "number", "0.2"));
    String page = browser.get("/job/wrong/steps").body();
    assertThat(page).contains("right is " + numbers.get(1)).doesNotContain("value=\"yes\"");
    assertRefused(tick("wrong", "open/bonnet"), numbers.get(0) + " does not serve");
    assertThat(browser.get("/job/wrong").body()).contains("another part number is needed");
    assertThat(browser.get("/job/wrong/sign").body())
        .contains("Part number " + numbers.get(0) + " does not serve");
    String form = "/job/wrong/number";
    assertThat(browser.get(form).body()).contains(numbers.get(1), "000017");
    assertRefused(
        post(form, "basedOn", number("wrong"), "partNumber", numbers.get(0)),
        "it has to be " + numbers.get(1));
    assertKept(
        post(form, "basedOn", number("wrong"), "partNumber", numbers.get(1), "serial", "000031"));
    assertThat(job("wrong").partNumber()).contains(numbers.get(1));
    assertThat(job("wrong").serial()).contains("000031");
    assertThat(browser.get("/job/wrong/sign").body()).doesNotContain("does not serve");
  }

  @Test
  void cautionsAndPowerComeBeforeTheAnswer() {
    jobs.survey("seen").underWay("jump", 5);
    ready("seen");
    assertKept(answer("seen", "tow-prep", "value", "no"));
    String live = browser.get("/job/seen/survey").body();
    assertThat(live).contains("The battery is connected").doesNotContain("name=\"read\"");
    assertRefused(answer("seen", "rear-feed", "number", "12.1"), "see to it that power is on");
    HttpResponse<String> kept =
        answer("seen", "rear-feed", "number", "12.1", "unit", "V", "power", "on");
    assertKept(kept);
    String ground = browser.get("/job/seen/survey").body();
    assertThat(ground)
        .contains("Airbag and belt pretensioner wiring is within reach", "The battery is isolated")
        .contains("name=\"read\"");
    String read = "caution/battery caution/restraint";
    assertRefused(
        answer("seen", "floor-ground", "number", "200 k\u03a9", "power", "off"),
        "say that you did");
    assertRefused(
        answer("seen", "floor-ground", "number", "200 k\u03a9", "read", read, "power", "on"),
        "see to it that power is off");
    assertKept(
        answer("seen", "floor-ground", "number", "200 k\u03a9", "read", read, "power", "off"));
    assertThat(job("seen").taken("answer/floor-ground").map(Taken::value)).contains("200 k\u03a9");
    // At its step the steps before it come first.
    String at = browser.get("/job/jump/steps?step=" + question("floor-ground")).body();
    assertThat(at).contains("First comes step").doesNotContain("id=\"number\"");
    assertRefused(
        answer("jump", "floor-ground", "number", "200 k\u03a9", "from", "steps"),
        "first comes step");
  }

  @Test
  void aNumberBetweenTheAnswersCanBeNoted() {
    jobs.survey("between");
    ready("between");
    assertKept(answer("between", "tow-prep", "value", "no"));
    HttpResponse<String> page = answer("between", "rear-feed", "number", "6", "power", "on");
    assertRefused(page, "6 V fits none of the answers");
    assertThat(page.body())
        .contains("<details class=\"job-fold\" open>", "feed of section B: 6 V\" maxlength")
        .contains("/new/finding?job=between&amp;step=ask%2Frear-feed&amp;was=");
    HttpResponse<String> noted =
        post(
            "/job/between/otherwise",
            "step",
            "ask/rear-feed",
            "was",
            "6 V at the test point",
            "back",
            "/job/between/survey");
    assertKept(noted);
    assertThat(noted.headers().firstValue("Location").orElse("")).contains("/between/survey");
  }

  @Test
  void aNameIsTypedOnce() {
    jobs.underWay("named", at("act/reconnect"));
    ready("named");
    HttpResponse<String> touches = answer("named", "step-before", "value", "left", "from", "steps");
    assertThat(touches.statusCode()).as(touches.body()).isEqualTo(422);
    assertThat(touches.body())
        .contains("That touches what is done", "name=\"from\" value=\"steps\"")
        .contains("name=\"value\" value=\"left\"");
    assertThat(touches.headers().allValues("Set-Cookie"))
        .anyMatch(it -> it.startsWith("who=Ben+Ortega"));
    HttpResponse<String> refused = tick("named", "act/reconnect");
    assertThat(refused.headers().allValues("Set-Cookie"))
        .anyMatch(it -> it.startsWith("who=Ben+Ortega"));
  }

  @Test
  void valuesOffTheWayAreNoAnswers() {
    jobs.underWay("off", jobs.way().size());
    ready("off");
    String page = browser.get("/job/off/values").body();
    assertThat(page).contains("Measured to answer a question").doesNotContain("not on the way now");
    HttpResponse<String> changed =
        answer("off", "rear-feed", "number", "0.2", "power", "on", "sure", "yes");
    assertKept(changed);
    assertThat(browser.get("/job/off/values").body())
        .contains("Taken at steps that are not on the way now");
  }

  @Test
  void enterInANameFieldGivesNoAnswer() {
    jobs.survey("enter");
    ready("enter");
    String page = browser.get("/job/enter/survey?question=" + question("tow-prep")).body();
    String form = page.substring(page.indexOf("<section class=\"job-step\""));
    assertThat(form.substring(form.indexOf("<button")))
        .startsWith("<button disabled hidden></button>");
  }
}
