package org.loomwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.model.design.Step;
import org.loomwright.model.job.Deviation;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.JobState;
import org.loomwright.model.job.Taken;
import org.loomwright.model.json.DocumentBinder;
import org.loomwright.model.json.JsonText;
import org.loomwright.papers.hand.GuidePrint;
import org.loomwright.web.job.DemoJobs;
import org.loomwright.web.job.JobText;

/** What the pages of jobs keep, merge and refuse. */
class JobRoutesTest {
  private static final Map<String, String> BEN = Map.of("who", "Ben Ortega");

  @TempDir private Path folder;
  private DemoStore store;
  private DemoJobs jobs;
  private Browser browser;

  @BeforeEach
  void open() {
    store = DemoStore.in(folder);
    jobs = DemoJobs.in(store.store());
    browser = new Browser(store.pages());
  }

  @AfterEach
  void close() {
    store.close();
  }

  private static String form(Map<String, String> fields) {
    return fields.entrySet().stream()
        .map(it -> encoded(it.getKey()) + "=" + encoded(it.getValue()))
        .collect(Collectors.joining("&"));
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }

  private HttpResponse<String> post(String path, String... fields) {
    Map<String, String> all = new java.util.LinkedHashMap<>(BEN);
    for (int i = 0; i < fields.length; i += 2) {
      all.put(fields[i], fields[i + 1]);
    }
    return browser.post(path, form(all));
  }

  /** The page of a job once its kit is planned. */
  private String ready(String path) {
    for (int i = 0; i < 1200; i++) {
      String page = browser.get(path).body();
      if (!page.contains("The kit is being planned")) {
        return page;
      }
      try {
        Thread.sleep(100);
      } catch (InterruptedException stopped) {
        Thread.currentThread().interrupt();
      }
    }
    throw new AssertionError(path + " was still being planned");
  }

  private Job job(String id) {
    if (JsonText.parse(store.text(DemoJobs.key(id))) instanceof JsonText.Tree tree
        && DocumentBinder.bind(tree.node()).good().orElse(null) instanceof Job job) {
      return job;
    }
    throw new AssertionError(store.text(DemoJobs.key(id)));
  }

  private String record(String id) {
    return jobs.record(store.text(DemoJobs.key(id)));
  }

  private String number(String id) {
    return Long.toString(store.number(DemoJobs.key(id)));
  }

  @Test
  void ticksOfTwoPhonesMerge() {
    jobs.underWay("half", 34);
    ready("/job/half");
    List<Step> next = jobs.way().subList(34, 37);
    String seen = number("half");
    Step one = next.get(0);
    Step other = jobs.way().get(33);
    HttpResponse<String> first =
        post("/job/half/tick", "step", one.id(), "basedOn", seen, "done", "yes");
    assertThat(first.statusCode()).as(first.body()).isEqualTo(303);
    HttpResponse<String> second =
        post("/job/half/tick", "step", other.id(), "basedOn", seen, "done", "no");
    assertThat(second.statusCode()).as(second.body()).isEqualTo(303);
    assertThat(job("half").done()).contains(one.id()).doesNotContain(other.id());
    // One after the other, both from the page as it was.
    String again = number("half");
    assertThat(
            post("/job/half/tick", "step", other.id(), "basedOn", again, "done", "yes")
                .statusCode())
        .isEqualTo(303);
    assertThat(
            post("/job/half/otherwise", "step", other.id(), "was", "a clip is missing")
                .statusCode())
        .isEqualTo(303);
    assertThat(
            post(
                    "/job/half/take",
                    "step",
                    "measure/rest",
                    "basedOn",
                    again,
                    "value.rest-voltage",
                    "12.5")
                .statusCode())
        .isEqualTo(303);
    assertThat(job("half").done()).contains(one.id(), other.id());
    assertThat(job("half").taken("rest-voltage").map(Taken::value)).contains("12.5 V");
    assertThat(job("half").deviations()).hasSize(1);
  }

  @Test
  void valuesOfTwoPhonesThatDifferAreAskedAbout() {
    jobs.underWay("half", 34);
    ready("/job/half");
    String seen = number("half");
    assertThat(value(seen, "12.5").statusCode()).isEqualTo(303);
    HttpResponse<String> other = value(seen, "12.9");
    assertThat(other.statusCode()).isEqualTo(409);
    assertThat(other.body()).contains("12.5 V", "12.9 V");
  }

  private HttpResponse<String> value(String basedOn, String volts) {
    return post(
        "/job/half/take", "step", "measure/rest", "basedOn", basedOn, "value.rest-voltage", volts);
  }

  @Test
  void stepsKeepTheirOrderWhereItMatters() {
    jobs.underWay("half", 5);
    ready("/job/half");
    Step isolate =
        jobs.way().stream().filter(it -> it.id().equals("act/isolate")).findFirst().orElseThrow();
    assertRefused(tick("half", isolate.id()), "first comes step");
    Step land =
        jobs.way().stream().filter(it -> it.id().startsWith("land/")).findFirst().orElseThrow();
    assertRefused(tick("half", land.id()), "first comes step");
    assertRefused(tick("half", "measure/drop"), "first comes step");
    assertRefused(tick("half", "nothing"), "the guide has no such step");
    assertRefused(tick("half", "ask/rear-feed"), "a question is done when it is answered");
    Step off =
        jobs.plan().guide().steps().stream()
            .filter(it -> !jobs.way().contains(it))
            .findFirst()
            .orElseThrow();
    assertRefused(tick("half", off.id()), "not on the way of this vehicle");
    Step caution = jobs.way().get(0);
    assertRefused(
        post("/job/half/tick", "step", caution.id(), "basedOn", number("half"), "done", "no"),
        "was done on the strength of it");
    assertThat(number("half")).isEqualTo("1");
  }

  private HttpResponse<String> tick(String id, String step) {
    return post("/job/" + id + "/tick", "step", step, "basedOn", number(id), "done", "yes");
  }

  private static void assertRefused(HttpResponse<String> answer, String why) {
    assertThat(answer.statusCode()).isEqualTo(422);
    assertThat(answer.body()).contains("Not saved").contains(why);
  }

  @Test
  void nonsenseIsRefusedInWords() throws IOException {
    jobs.underWay("half", 5).survey("seen").complete("over", true).complete("full", false);
    ready("/job/half");
    assertThat(browser.get("/job/none").statusCode()).isEqualTo(404);
    assertThat(post("/job/none/tick", "step", "x").statusCode()).isEqualTo(404);
    assertRefused(value(number("half"), "12,4"), "write a point in place of the comma: 12.4");
    assertRefused(value(number("half"), "plenty"), "is no number");
    assertRefused(value(number("half"), "12.4 A"), "in V, not in");
    assertRefused(value(number("half"), ""), "write down at least one value");
    assertRefused(value("0", "12.6"), "too old");
    assertRefused(post("/job/half/survey", "question", "7000", "value", "yes"), "no such question");
    String tow = question("tow-prep");
    assertRefused(post("/job/half/survey", "question", tow, "value", "x"), "choose one of");
    assertRefused(post("/job/half/otherwise", "step", "measure/rest", "was", " "), "write what");
    assertRefused(post("/job/seen/begin", "partNumber", "X"), "is not released");
    assertRefused(tick("seen", "measure/rest"), "fitting has not begun");
    assertRefused(post("/job/seen/release", "release", "7"), "choose one of the releases");
    assertRefused(post("/job/half/sign", "when", "2026-11-26"), "something stands against it");
    assertRefused(post("/job/full/sign", "when", "2026-11-26"), "something stands against it");
    assertRefused(post("/job/over/reopen", "reason", ""), "write why");
    assertRefused(tick("over", "measure/rest"), "this job is over");
    assertRefused(post("/job/over/survey", "question", tow, "value", "yes"), "this job is over");
    assertRefused(post("/new/job", "kit", "nothing 1", "vehicleNote", "x"), "choose the kit");
    assertRefused(post("/new/job", "kit", "crew-comfort 9", "vehicleNote", "x"), "no such release");
    assertRefused(
        post("/new/job", "kit", "crew-comfort 1", "vehicleNote", "x", "when", "yesterday"),
        "yesterday");
    assertThat(upload("/job/half/photo", "photo", "a.jpg", new byte[] {1, 2, 3}).statusCode())
        .isEqualTo(422);
    assertThat(browser.get("/job/seen/as-fitted.pdf").statusCode()).isEqualTo(404);
  }

  private String question(String trait) {
    return jobs.plan().guide().steps().stream()
        .filter(it -> it.ask().filter(ask -> ask.trait().equals(trait)).isPresent())
        .map(it -> Integer.toString(it.number()))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void anotherAnswerNamesTheStepsItTouches() {
    jobs.underWay("half", 34);
    ready("/job/half");
    String question = question("rear-feed");
    HttpResponse<String> asked =
        post(
            "/job/half/survey",
            "question",
            question,
            "number",
            "0.2",
            "power",
            "on",
            "basedOn",
            number("half"));
    assertThat(asked.statusCode()).isEqualTo(422);
    assertThat(asked.body()).contains("That touches what is done", "Lay lead L1");
    HttpResponse<String> sure =
        post(
            "/job/half/survey",
            "question",
            question,
            "number",
            "0.2 V",
            "power",
            "on",
            "basedOn",
            number("half"),
            "sure",
            "yes");
    assertThat(sure.statusCode()).isEqualTo(303);
    assertThat(job("half").answers()).containsEntry("rear-feed", "no");
    assertThat(browser.get("/job/half").body()).contains("done, but not called for");
    assertThat(browser.get("/job/half/sign").body()).contains("undo them");
  }

  @Test
  void aJobThatIsOverIsOpenedAgainWithAReason() {
    jobs.complete("over", true);
    assertThat(ready("/job/over/steps?step=4")).doesNotContain("Write the values down</button>");
    HttpResponse<String> opened = post("/job/over/reopen", "reason", "wrong serial number");
    assertThat(opened.statusCode()).isEqualTo(303);
    assertThat(job("over").signOff()).isEmpty();
    assertThat(browser.get("/history/job/over").body())
        .contains("opened again: wrong serial number");
  }

  @Test
  void theRecordOfAGuideEqualsWhatWasEntered() throws IOException {
    jobs.complete("full", false).underWay("empty", 0);
    ready("/job/full");
    Job entered = job("full");
    String record = record("full");
    HttpResponse<String> shown =
        upload("/job/empty/take-in", "file", "x.guide-record.json", bytes(record));
    assertThat(shown.statusCode()).as(shown.body()).isEqualTo(200);
    assertThat(shown.body()).contains("What it changes", "11.9 V", "the loom runs on the other");
    assertThat(number("empty")).as("nothing is saved before it is accepted").isEqualTo("1");
    HttpResponse<String> accepted =
        post("/job/empty/take-in/accept", "basedOn", number("empty"), "record", record);
    assertThat(accepted.statusCode()).as(accepted.body()).isEqualTo(303);
    assertSame(job("empty"), entered);

    HttpResponse<String> fresh = post("/jobs/take-in/accept", "record", record);
    assertThat(fresh.statusCode()).as(fresh.body()).isEqualTo(303);
    String id = fresh.headers().firstValue("Location").orElse("").replaceAll("/job/|\\?.*", "");
    assertSame(job(id), entered);
  }

  private static void assertSame(Job taken, Job entered) {
    assertThat(taken.answers()).isEqualTo(entered.answers());
    assertThat(taken.done()).containsExactlyInAnyOrderElementsOf(entered.done());
    assertThat(taken.taken())
        .extracting(Taken::reading, Taken::value)
        .containsExactlyInAnyOrderElementsOf(
            entered.taken().stream()
                .map(it -> org.assertj.core.groups.Tuple.tuple(it.reading(), it.value()))
                .toList());
    assertThat(taken.deviations())
        .extracting(it -> it.was())
        .containsExactlyInAnyOrderElementsOf(
            entered.deviations().stream().map(it -> it.was()).toList());
    assertThat(taken.serial()).isEqualTo(entered.serial());
    assertThat(taken.partNumber()).isEqualTo(entered.partNumber());
    assertThat(taken.state()).isEqualTo(entered.state());
    assertThat(taken.guide()).isEqualTo(entered.guide());
  }

  @Test
  void theReleaseOfARecordIsTakenIn() throws IOException {
    jobs.complete("full", false).survey("seen");
    ready("/job/full");
    ready("/job/seen");
    String record = record("full");
    assertThat(record).contains("\"release\":1");
    assertThat(upload("/job/seen/take-in", "file", "x.json", bytes(record)).body())
        .contains("<li>Release: 1</li>");
    assertThat(accept("seen", record).statusCode()).isEqualTo(303);
    assertThat(job("seen").release()).contains(1);
    assertSame(job("seen"), job("full"));
  }

  @Test
  void aLaterRecordOfTheSameWorkCanTakeSomethingBack() throws IOException {
    jobs.underWay("half", 34).underWay("less", 30);
    ready("/job/half");
    String less = record("less").replace("12.1", "12.3");
    HttpResponse<String> shown = upload("/job/half/take-in", "file", "x.json", bytes(less));
    assertThat(shown.body())
        .contains("Which counts?", "it may be an older one", "No longer done: steps", "12.3 V");
    HttpResponse<String> unsaid = accept("half", less);
    assertThat(unsaid.statusCode()).isEqualTo(422);
    assertThat(unsaid.body()).contains("say which of the two counts");
    Job before = job("half");
    assertThat(accept("half", less, "counts", "job").statusCode()).isEqualTo(303);
    assertSame(job("half"), before);
    assertThat(accept("half", less, "counts", "record").statusCode()).isEqualTo(303);
    assertThat(job("half").done()).isEqualTo(job("less").done());
    assertThat(job("half").taken("answer/rear-feed").map(Taken::value)).contains("12.3 V");
  }

  @Test
  void theRecordOfAnotherVehicleIsAskedAbout() throws IOException {
    jobs.complete("full", false).underWay("empty", 0);
    ready("/job/full");
    String same = record("full").replace("OST 417", "ost-417");
    assertThat(upload("/job/empty/take-in", "file", "x.json", bytes(same)).body())
        .doesNotContain("One vehicle?");
    String other = record("full").replace("OST 417", "NOR 88");
    assertThat(upload("/job/empty/take-in", "file", "x.json", bytes(other)).body())
        .contains("The record is of NOR 88, this job of OST 417.");
    HttpResponse<String> unsaid = accept("empty", other);
    assertThat(unsaid.statusCode()).isEqualTo(422);
    assertThat(unsaid.body()).contains("say that it is the same vehicle");
    assertThat(accept("empty", other, "same", "yes").statusCode()).isEqualTo(303);
    assertThat(job("empty").vehicleNote()).isEqualTo("OST 417");
  }

  private HttpResponse<String> accept(String id, String record, String... more) {
    List<String> fields = new ArrayList<>(List.of("basedOn", number(id), "record", record));
    fields.addAll(List.of(more));
    return post("/job/" + id + "/take-in/accept", fields.toArray(String[]::new));
  }

  @Test
  void otherRecordsAreRefusedInWords() throws IOException {
    jobs.complete("full", false).underWay("empty", 0);
    ready("/job/full");
    String record = record("full");
    String print = GuidePrint.of(jobs.plan());
    assertNotTaken(record.replace(print, "0123456789abcdef"), "another guide");
    assertNotTaken(record.replace("000017", "000018"), "serial");
    assertNotTaken(record.substring(0, record.length() / 2), "");
    assertNotTaken("{}", "");
    assertNotTaken("what?", "");
    assertNotTaken(record.replace("crew-comfort", "other-kit"), "other-kit");
    HttpResponse<String> picture =
        upload("/job/empty/take-in", "file", "photo.jpg", DemoJobs.photo());
    assertThat(picture.statusCode()).isEqualTo(422);
    assertThat(picture.body()).contains("no code was found");
    assertThat(upload("/jobs/take-in", "file", "x", new byte[] {(byte) 0xc3, 0x28}).body())
        .contains("the file is no text");
    assertThat(number("empty")).isEqualTo("1");
  }

  private void assertNotTaken(String record, String why) throws IOException {
    HttpResponse<String> shown = upload("/job/empty/take-in", "file", "x.json", bytes(record));
    assertThat(shown.statusCode()).as(record).isEqualTo(422);
    assertThat(shown.body()).contains("Not taken in").contains(why);
    assertThat(post("/job/empty/take-in/accept", "basedOn", "1", "record", record).statusCode())
        .isEqualTo(422);
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private HttpResponse<String> upload(String path, String field, String name, byte[] file)
      throws IOException {
    return upload(path, field, name, file, "");
  }

  private HttpResponse<String> upload(
      String path, String field, String name, byte[] file, String step) throws IOException {
    String edge = "----edge";
    ByteArrayOutputStream body = new ByteArrayOutputStream();
    body.write(
        bytes(
            "--"
                + edge
                + "\r\nContent-Disposition: form-data; name=\"step\"\r\n\r\n"
                + step
                + "\r\n"));
    body.write(
        bytes(
            "--"
                + edge
                + "\r\nContent-Disposition: form-data; name=\"who\"\r\n\r\nBen\r\n--"
                + edge
                + "\r\nContent-Disposition: form-data; name=\""
                + field
                + "\"; filename=\""
                + name
                + "\"\r\nContent-Type: application/octet-stream\r\n\r\n"));
    body.write(file);
    body.write(bytes("\r\n--" + edge + "--\r\n"));
    HttpRequest request =
        HttpRequest.newBuilder(URI.create(store.pages().address()).resolve(path))
            .header("Content-Type", "multipart/form-data; boundary=" + edge)
            .POST(HttpRequest.BodyPublishers.ofByteArray(body.toByteArray()))
            .build();
    try {
      return HttpClient.newHttpClient()
          .send(request, HttpResponse.BodyHandlers.ofString(StandardCharsets.UTF_8));
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new AssertionError(path, stopped);
    }
  }

  /** Stops the planning of the kit, so that a job, which then names no release, has no guide. */
  private void stopPlanning(String job) {
    String text =
        JobText.of(store.text(DemoJobs.key(job))).with("release", Optional.empty()).text();
    assertThat(post("/text/job/" + job, "basedOn", "1", "text", text).statusCode()).isEqualTo(303);
    String volts = "11.8 V";
    for (int i = 1; i <= 40; i++) {
      // Documents of which there is no plan yet; now and then it is made before it is stopped.
      String next = "11.7" + (10 + i) + " V";
      store.edit(
          DemoStore.VAN,
          "\"supplyLowest\": \"" + volts + "\"",
          "\"supplyLowest\": \"" + next + "\"",
          "Anna");
      volts = next;
      assertThat(browser.get("/kit/crew-comfort/verdict").statusCode()).isEqualTo(200);
      assertThat(browser.post("/kit/crew-comfort/stop", "").statusCode()).isEqualTo(303);
      if (browser.get("/kit/crew-comfort/verdict").body().contains("stopped")) {
        return;
      }
    }
    throw new AssertionError("planning was never stopped");
  }

  @Test
  void aPlanThatWasStoppedCanBeMadeAllTheSame() {
    jobs.underWay("half", 5);
    stopPlanning("half");
    assertThat(browser.get("/job/half").body())
        .contains("The planning of the kit was stopped.", "Plan it now")
        .doesNotContain("hx-get");
    assertThat(browser.post("/kit/crew-comfort/again", "back=%2Fjob%2Fhalf").statusCode())
        .isEqualTo(303);
    assertThat(ready("/job/half")).contains("steps left");
    assertThat(browser.get("/job/half/basis").body())
        .contains("data-ready")
        .doesNotContain("<html");
  }

  @Test
  void aPhotoKeepsItsStepWhileThereIsNoPlan() throws IOException {
    jobs.underWay("half", 5);
    stopPlanning("half");
    assertThat(
            upload("/job/half/photo", "photo", "a.jpg", DemoJobs.photo(), "measure/rest")
                .statusCode())
        .isEqualTo(303);
    assertThat(job("half").photos()).hasSize(1);
    assertThat(job("half").photos().get(0).step()).contains("measure/rest");
    assertThat(upload("/job/half/photo", "photo", "a.jpg", DemoJobs.photo(), "a b").statusCode())
        .isEqualTo(422);
  }

  @Test
  void aRefusedFormKeepsWhatWasTyped() {
    jobs.complete("full", false).complete("over", true);
    ready("/job/full");
    Deviation open = job("full").deviations().get(1);
    HttpResponse<String> nameless =
        browser.post("/job/full/give-up", "reason=the+owner+sold+%3Cit%3E");
    assertThat(nameless.statusCode()).isEqualTo(422);
    assertThat(nameless.body()).contains(">the owner sold &lt;it&gt;</textarea>");
    assertThat(fold(nameless.body(), "Give the job up")).contains(" open");
    HttpResponse<String> settled =
        browser.post(
            "/job/full/settle",
            form(
                Map.of(
                    "was", open.was(), "step", open.step().orElse(""), "settled", "seen to it")));
    assertThat(settled.statusCode()).isEqualTo(422);
    assertThat(settled.body()).contains("value=\"seen to it\"");
    assertThat(fold(post("/job/over/reopen", "reason", "").body(), "Open the job again"))
        .contains(" open");
    assertThat(fold(browser.get("/job/full").body(), "Give the job up")).doesNotContain(" open");
  }

  /** The tag that begins the fold with a heading. */
  private static String fold(String page, String heading) {
    int at = page.indexOf("><summary>" + heading);
    assertThat(at).as(page).isPositive();
    return page.substring(page.lastIndexOf('<', at), at);
  }

  @Test
  void factsOfAJobArePutRight() {
    jobs.underWay("half", 5).complete("over", true);
    String seen = number("half");
    HttpResponse<String> saved =
        post(
            "/job/half/facts",
            "basedOn",
            seen,
            "vehicleNote",
            "OST 471",
            "owner",
            "Parcel round",
            "by",
            "Ina Roth",
            "when",
            "2026-11-27",
            "serial",
            "");
    assertThat(saved.statusCode()).as(saved.body()).isEqualTo(303);
    Job job = job("half");
    assertThat(job.name()).isEqualTo("OST 471: heater");
    assertThat(job.vehicleNote()).isEqualTo("OST 471");
    assertThat(job.owner()).contains("Parcel round");
    assertThat(job.by()).isEqualTo("Ina Roth");
    assertThat(job.when()).isEqualTo("2026-11-27");
    assertThat(job.serial()).isEmpty();
    HttpResponse<String> wrong =
        post(
            "/job/half/facts",
            "basedOn",
            number("half"),
            "vehicleNote",
            "",
            "by",
            "Ina Roth",
            "when",
            "some day");
    assertRefused(wrong, "write which vehicle it is");
    assertThat(wrong.body()).contains("value=\"some day\"");
    assertThat(fold(wrong.body(), "Put vehicle")).contains(" open");
    HttpResponse<String> day =
        post(
            "/job/half/facts",
            "basedOn",
            number("half"),
            "vehicleNote",
            "x",
            "by",
            "Ina Roth",
            "when",
            "some day");
    assertRefused(day, "wrong-when");
    assertRefused(
        post("/job/over/facts", "basedOn", "1", "vehicleNote", "x", "by", "y"), "this job is over");
  }

  @Test
  void noFormChangesAJobThatIsOver() {
    jobs.complete("over", true);
    String text = store.text(DemoJobs.key("over"));
    String other = text.replace("\"Ben Ortega\",\n  \"state\"", "\"Ina Roth\",\n  \"state\"");
    assertThat(other).isNotEqualTo(text);
    HttpResponse<String> changed = post("/text/job/over", "basedOn", "1", "text", other);
    assertThat(changed.statusCode()).isEqualTo(422);
    assertThat(changed.body()).contains("this job is over");
    String open = JobText.of(text).state(JobState.UNDER_WAY).signOff(Optional.empty()).text();
    assertThat(post("/text/job/over", "basedOn", "1", "text", open).statusCode()).isEqualTo(422);
    assertThat(
            post("/text/job/over", "basedOn", "1", "text", open, "why", "signed too early")
                .statusCode())
        .isEqualTo(303);
    assertThat(job("over").isOver()).isFalse();
  }

  @Test
  void aReleaseThatIsMissingIsNamedWhileWorkIsUnderWay() {
    jobs.underWay("half", 5).underWay("bare", 5);
    String text =
        JobText.of(store.text(DemoJobs.key("bare"))).with("release", Optional.empty()).text();
    assertThat(post("/text/job/bare", "basedOn", "1", "text", text).statusCode()).isEqualTo(303);
    assertThat(ready("/job/bare")).contains("Release that is fitted", "can't be signed off");
    assertThat(post("/job/bare/release", "release", "1").statusCode()).isEqualTo(303);
    assertThat(job("bare").release()).contains(1);
    assertThat(ready("/job/half")).doesNotContain("Release that is fitted");
    assertRefused(post("/job/half/release", "release", "1"), "worked by the release it names");
  }

  @Test
  void aPhotoIsKeptWithItsStep() throws IOException {
    jobs.underWay("half", 5);
    ready("/job/half");
    assertThat(upload("/job/half/photo", "photo", "IMG 1.jpg", DemoJobs.photo()).statusCode())
        .isEqualTo(303);
    assertThat(job("half").photos()).hasSize(1);
    String file = job("half").photos().get(0).file();
    assertThat(store.store().pictures().named(file)).isNotEqualTo(Optional.empty());
    assertThat(browser.get("/job/half").body()).contains("found-photo");
  }
}
