package org.loomwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.model.design.Verdict;
import org.loomwright.model.document.Document;
import org.loomwright.model.evidence.How;
import org.loomwright.model.finding.Finding;
import org.loomwright.model.finding.FindingState;
import org.loomwright.model.finding.FoundAt;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.JobState;
import org.loomwright.model.job.SignOff;
import org.loomwright.model.json.DocumentKind;
import org.loomwright.model.json.DocumentWriter;
import org.loomwright.model.stock.Batch;
import org.loomwright.model.stock.StockItem;
import org.loomwright.model.stock.StockState;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Draft;
import org.loomwright.store.Pin;
import org.loomwright.store.ReleaseDraft;
import org.loomwright.store.Revision;
import org.loomwright.store.SaveResult;
import org.loomwright.store.Signature;
import org.loomwright.web.shop.Pinned;
import org.loomwright.web.shop.VehicleChange;

/** A finding taken into its vehicle, and what that touches: releases, jobs, kits on the shelf. */
class FindingIntoTest {
  private static final DocumentKey DEAD = new DocumentKey("finding", "dead-slot");
  private static final String FORM = "/finding/dead-slot/into";
  private static final Signature BY = new Signature("Test", "for the test");

  @TempDir private Path folder;
  private DemoStore demo;
  private Browser browser;

  @BeforeEach
  void open() {
    demo = DemoStore.in(folder);
    browser = new Browser(demo.pages());
    save(finding("dead-slot", "slot rear-block F7", Map.of("body", "panel")));
  }

  private static Finding finding(String id, String at, Map<String, String> traits) {
    return new Finding(
        id,
        "F7 dead on a late van",
        "1",
        "packer",
        Optional.of(FoundAt.of(at)),
        "No voltage at F7, though section B is live at F5.",
        Optional.of("Section B is fed as a whole."),
        How.MEASURED,
        "2026-02-03",
        "T. Halvard",
        Optional.of("0611"),
        Optional.empty(),
        Optional.of("crew-comfort"),
        Optional.empty(),
        Optional.of("prepare/cases"),
        traits,
        List.of(),
        FindingState.OPEN,
        Optional.empty(),
        Optional.empty());
  }

  @AfterEach
  void close() {
    demo.close();
  }

  private void save(Document it) {
    DocumentKey key = new DocumentKey(DocumentKind.of(it).word(), it.id());
    assertThat(demo.store().documents().save(new Draft(key, DocumentWriter.write(it), BY), 0))
        .isInstanceOf(SaveResult.Saved.class);
  }

  private String page(String address) {
    HttpResponse<String> page = browser.get(address);
    assertThat(page.statusCode()).as(address).isEqualTo(200);
    Markup.elements(page.body());
    return page.body();
  }

  private FormOnPage form() {
    return FormOnPage.of(page(FORM)).with("who", "Anna");
  }

  private HttpResponse<String> send(FormOnPage form) {
    return browser.post(form.action(), form.body());
  }

  private static void goesToImpact(HttpResponse<String> answer) {
    assertThat(answer.statusCode())
        .as(answer.body().replaceAll("(?s)^.*<main|</ul>.*$", ""))
        .isEqualTo(303);
    assertThat(answer.headers().firstValue("Location").orElseThrow())
        .startsWith("/findings/dead-slot/impact?done=");
  }

  private static FormOnPage trait(FormOnPage form) {
    return form.with("what", "trait")
        .with("trait-name", "late fuse block")
        .with("fact", "FED no")
        .with("usual", "with the fuse block as known")
        .with("found", "with the late fuse block")
        .with("found-share", "10 %")
        .with("how", "LOOK")
        .with("question", "Is there a yellow dot beside F7?")
        .with("usual-expect", "no dot")
        .with("found-expect", "a yellow dot");
  }

  @Test
  void evidenceLeavesTheFactsAsTheyAre() {
    goesToImpact(send(form().with("what", "evidence")));
    assertThat(demo.text(DemoStore.VAN)).contains("No voltage at F7", "\"revision\": \"6\"");
    assertThat(demo.text(DEAD)).contains("accepted", "Taken in as evidence", "\"takenInto\"");
    assertThat(page("/finding/dead-slot")).contains("Taken into revision 6 of the vehicle.");
    assertThat(impact()).contains("Not touched.").doesNotContain("Jobs</h4>");
  }

  @Test
  void aValueMoreTakesItsShareFromTheOthers() {
    goesToImpact(
        send(
            form()
                .with("what", "value")
                .with("value-of", "body")
                .with("value-words", "with a tipper")
                .with("value-expect", "a tipping bed")
                .with("value-share", "10")));
    assertThat(demo.text(DemoStore.VAN)).contains("with-a-tipper", "49.5 %", "a tipping bed");
  }

  @Test
  void aNewTraitTouchesExactlyTheJobsAndKitsOfItsRelease() {
    Pinned pinned = Pinned.of(demo.store(), "crew-comfort").orElseThrow();
    for (int i = 0; i < 2; i++) {
      release("crew-comfort", pinned.pins());
    }
    save(job("fed", 2, JobState.SIGNED_OFF, "yes"));
    save(job("fed-under-way", 2, JobState.UNDER_WAY, "yes"));
    save(job("not-fed", 2, JobState.SIGNED_OFF, "no"));
    save(job("other-kit", "trailer", 2, JobState.SIGNED_OFF, "yes"));
    save(
        new Batch(
            "march",
            "March",
            "1",
            "crew-comfort",
            2,
            "CC-1",
            "2026-03-01",
            "J. Pell",
            List.of(
                item("S-1", StockState.ON_THE_SHELF),
                item("S-2", StockState.SOLD),
                item("S-3", StockState.SCRAPPED))));

    goesToImpact(send(trait(form())));
    assertThat(demo.text(DemoStore.VAN))
        .contains("late-fuse-block = as-recorded", "with the late fuse block", "\"90 %\"");
    assertThat(demo.text(DEAD)).contains("New trait: late fuse block.");
    String told = impact();
    assertThat(told)
        .contains("Kit crew-comfort, release 2", "Kit crew-comfort, release 1")
        .contains("Proven no longer on ", "with the late fuse block")
        .contains("S-1", "S-2")
        .doesNotContain("S-3", "job/other-kit");
    assertThat(lines(told))
        .containsExactlyInAnyOrder(
            "fed: ▲ perhaps:", "fed-under-way: ▲ perhaps:", "not-fed: ✓ not concerned:");
    assertThat(told).contains("It was not looked at: late fuse block.");
    assertThat(browser.planned("/kit/crew-comfort/proof"))
        .contains("2 comebacks", "F7 dead on a late van");
    assertThat(browser.planned("/kit/crew-comfort/leads")).doesNotContain("F7 dead on a late van");
  }

  private void release(String kit, List<Pin> pins) {
    demo.store()
        .releases()
        .release(
            new ReleaseDraft(kit, pins, Verdict.HOLDS, Map.of("pack.pdf", new byte[] {1}), BY));
  }

  /** A release that can't be read any more, and one of a kit that is no longer used. */
  @Test
  void aReleaseThatCantBeJudgedIsToldOfWithItsJobsAndKitsMade() {
    String fed = "\"fedWhen\": \"rear-feed = yes\"";
    String wrong = "\"fedWhen\": \"rear-fed = yes\"";
    demo.edit(DemoStore.VAN, fed, wrong, "Ben");
    long unreadable = demo.number(DemoStore.VAN);
    demo.edit(DemoStore.VAN, wrong, fed, "Ben");
    List<Pin> pins = Pinned.of(demo.store(), "crew-comfort").orElseThrow().pins();
    release(
        "crew-comfort",
        pins.stream()
            .map(it -> it.key().equals(DemoStore.VAN) ? new Pin(it.key(), unreadable) : it)
            .toList());
    save(job("under-way", 1, JobState.UNDER_WAY, "yes"));
    save(
        new Batch(
            "march",
            "March",
            "1",
            "crew-comfort",
            1,
            "CC-1",
            "2026-03-01",
            "J. Pell",
            List.of(item("S-1", StockState.ON_THE_SHELF))));
    retiredKit();

    goesToImpact(send(form().with("what", "evidence")));
    String told = impact();
    assertThat(told)
        .contains(
            "It can't be judged: its documents can't be read any more (",
            "rear-fed",
            "Hold them back until somebody has looked",
            "S-1",
            "Kit heater-before, which is no longer used, release 1");
    assertThat(lines(told)).contains("under-way: ▲ perhaps:", "of-old: ✓ not concerned:");
  }

  private void retiredKit() {
    DocumentKey old = new DocumentKey("kit", "heater-before");
    String text =
        demo.text(new DocumentKey("kit", "crew-comfort"))
            .replaceFirst("\"id\": \"crew-comfort\"", "\"id\": \"heater-before\"");
    assertThat(demo.store().documents().save(new Draft(old, text, BY), 0))
        .isInstanceOf(SaveResult.Saved.class);
    release("heater-before", Pinned.of(demo.store(), "heater-before").orElseThrow().pins());
    save(job("of-old", "heater-before", 1, JobState.SIGNED_OFF, "yes"));
    demo.store().documents().retire(old, demo.number(old), BY);
  }

  /** A tick on a job, a kit sold or a photo taken does not begin the work anew. */
  @Test
  void whatIsWorkedOutRestsOnWhatPlansRestOn() {
    Object before = VehicleChange.state(demo.store());
    save(job("fed", 1, JobState.SURVEY, "yes"));
    save(finding("another", "slot rear-block F5", Map.of()));
    assertThat(VehicleChange.state(demo.store())).isEqualTo(before);
    demo.edit(DemoStore.VAN, "Blue seal plug", "A blue seal plug", "Ben");
    assertThat(VehicleChange.state(demo.store())).isNotEqualTo(before);
  }

  /** The demo's slot F8 may lack its metal; who looked at it says so, and then it is known. */
  @Test
  void aFactThatNobodyKnewIsTakenInThoughFindingsAndJobsAnsweredIt() {
    String metal = "rear-block/F8/metal";
    demo.edit(
        new DocumentKey("job", "van-0533"),
        "\"answers\": {",
        "\"answers\": {\"" + metal + "\": \"no\", ",
        "Ben");
    save(finding("no-metal", "slot rear-block F8", Map.of(metal, "no")));
    FormOnPage form = FormOnPage.of(page("/finding/no-metal/into")).with("who", "Anna");
    HttpResponse<String> answer = send(trait(form).with("fact", "METAL no"));
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(303);
    assertThat(demo.text(DemoStore.VAN)).contains("\"late-fuse-block = as-recorded\"");
    assertThat(demo.text(new DocumentKey("finding", "no-metal"))).contains("\"accepted\"", metal);
    assertThat(page("/job/van-0533")).contains("Survey");
  }

  @Test
  void whatCantBeEvidenceIsNotOfferedAsSuch() {
    save(finding("place", "place cabin-floor", Map.of()));
    String page = page("/finding/place/into");
    assertThat(page)
        .contains("value=\"evidence\" disabled", "a place keeps no evidence of its own")
        .contains("value=\"value\" checked");
    FormOnPage form = FormOnPage.of(page).with("who", "Anna");
    HttpResponse<String> refused = send(form.with("what", "evidence"));
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body())
        .contains("it can't be evidence: a place keeps no evidence of its own")
        .doesNotContain("no longer has");
    assertThat(send(form.with("what", "value").with("value-of", "nothing")).body())
        .contains("choose the trait");
  }

  @Test
  void aFindingThatIsDecidedIsNotTakenIn() {
    FormOnPage form = form().with("what", "evidence");
    demo.edit(DEAD, "\"open\"", "\"set-aside\", \"outcome\": \"mistaken\"", "Ben");
    assertThat(browser.get(FORM).statusCode()).isEqualTo(409);
    HttpResponse<String> refused = send(form);
    assertThat(refused.statusCode()).isEqualTo(409);
    assertThat(refused.body()).contains("This finding is set aside. Open it again");
    assertThat(demo.text(DEAD)).contains("\"set-aside\"");
  }

  /** The jobs told of, each with its sign and word. */
  private static List<String> lines(String page) {
    List<String> lines = new ArrayList<>();
    java.util.regex.Matcher line =
        java.util.regex.Pattern.compile("<b>([^<]*)</b> <a href=\"/job/([^\"]*)\"").matcher(page);
    while (line.find()) {
      lines.add(line.group(2) + ": " + line.group(1));
    }
    return lines;
  }

  private String impact() {
    for (int i = 0; i < 1200; i++) {
      String page = page("/findings/dead-slot/impact");
      if (!page.contains("Being worked out")) {
        return page;
      }
      try {
        Thread.sleep(100);
      } catch (InterruptedException stopped) {
        throw new AssertionError(stopped);
      }
    }
    throw new AssertionError("still being worked out after two minutes");
  }

  private static StockItem item(String serial, StockState state) {
    return new StockItem(serial, state, Optional.empty(), Optional.empty());
  }

  private static Job job(String id, int release, JobState state, String fed) {
    return job(id, "crew-comfort", release, state, fed);
  }

  private static Job job(String id, String kit, int release, JobState state, String fed) {
    Map<String, String> answers =
        new TreeMap<>(
            Map.of("body", "panel", "tow-prep", "no", "step-before", "none", "floor-ground", "no"));
    answers.put("rear-feed", fed);
    return new Job(
        id,
        id,
        "1",
        kit,
        Optional.of(release),
        "packer",
        "van of " + id,
        Optional.empty(),
        "2026-03-04",
        "T. Halvard",
        state,
        Optional.of("CC-1"),
        Optional.of("S-" + id),
        Optional.empty(),
        answers,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        state == JobState.SIGNED_OFF
            ? Optional.of(new SignOff("T. Halvard", "2026-03-04", Optional.empty()))
            : Optional.empty());
  }

  @Test
  void whatIsMissingIsSaidAtItsFieldAndNothingIsSaved() {
    long before = demo.number(DemoStore.VAN);
    HttpResponse<String> refused =
        send(trait(form()).with("trait-name", "").with("found-share", "lots").with("fact", ""));
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body())
        .contains("name the trait", "write a share between 0 % and 100 %", "choose what is other")
        .contains("Is there a yellow dot beside F7?");
    assertThat(send(form().with("who", "")).body()).contains("write your name");
    assertThat(send(form().with("what", "nonsense")).body()).contains("choose what it is");
    HttpResponse<String> measured = send(trait(form()).with("place", "nowhere"));
    assertThat(measured.statusCode()).isEqualTo(422);
    assertThat(measured.body()).contains("the vehicle would not be right");
    assertThat(demo.number(DemoStore.VAN)).isEqualTo(before);
    assertThat(demo.text(DEAD)).contains("\"open\"");
    assertThat(browser.get("/finding/nothing/into").statusCode()).isEqualTo(404);
  }

  @Test
  void theVehicleIsNotChangedOverSomebodyElsesChangeOfTheSamePart() {
    FormOnPage old = trait(form());
    demo.edit(
        DemoStore.VAN,
        "\"fedWhen\": \"rear-feed = yes\"",
        "\"fedWhen\": \"rear-feed = yes or tow-prep = yes\"",
        "Ben");
    HttpResponse<String> refused = send(old);
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.body()).contains("somebody else changed the same part of the vehicle");
    assertThat(demo.text(DEAD)).contains("\"open\"");
  }

  @Test
  void countsBecomeShares() {
    save(job("one", 1, JobState.SURVEY, "yes"));
    String counts = page("/vehicle/packer/counts");
    assertThat(counts).contains("How common the values are", "Take these shares");
    HttpResponse<String> taken =
        browser.post(
            "/vehicle/packer/counts",
            "basedOn=" + demo.number(DemoStore.VAN) + "&trait=rear-feed&who=Anna");
    assertThat(taken.statusCode()).isEqualTo(303);
    // By hand, two jobs of the demo and this one: (3 + 10 × 0.62) / 13 = 70.77 %, rounded.
    assertThat(demo.text(DemoStore.VAN))
        .contains("\"71 %\"", "\"29 %\"", "\"counted\": 3", "\"counted\": 0");
    Revision saved = demo.store().documents().newest(DemoStore.VAN).orElseThrow().revision();
    assertThat(saved.by().why()).isEqualTo("shares of \"feed of section B\" from 3 seen");
    HttpResponse<String> again =
        browser.post(
            "/vehicle/packer/counts",
            "basedOn=" + demo.number(DemoStore.VAN) + "&trait=rear-feed&who=Anna");
    assertThat(again.statusCode()).isEqualTo(422);
    assertThat(again.body()).contains("take in all vehicles of this trait already");
    assertThat(page("/vehicle/packer/counts"))
        .contains("The shares on file take in all of them.")
        .doesNotContain("of feed of section B</span>");
    assertThat(
            browser.post("/vehicle/packer/counts", "basedOn=1&trait=nothing&who=Anna").statusCode())
        .isEqualTo(404);
  }
}
