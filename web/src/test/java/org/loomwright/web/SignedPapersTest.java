package org.loomwright.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.loomwright.model.job.Deviation;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.JobState;
import org.loomwright.model.job.SignOff;
import org.loomwright.model.json.DocumentBinder;
import org.loomwright.model.json.JsonText;
import org.loomwright.store.Draft;
import org.loomwright.store.Papers;
import org.loomwright.store.SaveResult;
import org.loomwright.store.Signature;
import org.loomwright.store.Store;
import org.loomwright.store.StoreTarget;
import org.loomwright.web.job.DemoJobs;
import org.loomwright.web.job.JobText;

/** The papers of a job that is signed off stay as they were signed. */
class SignedPapersTest {
  private static final String AS_FITTED = "/job/full/as-fitted.pdf";
  private static final String DISCLOSURE = "/job/full/disclosure.pdf";

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

  private Job job() {
    if (JsonText.parse(store.text(DemoJobs.key("full"))) instanceof JsonText.Tree tree
        && DocumentBinder.bind(tree.node()).good().orElse(null) instanceof Job job) {
      return job;
    }
    throw new AssertionError(store.text(DemoJobs.key("full")));
  }

  private void change(UnaryOperator<JobText> change) {
    String text = change.apply(JobText.of(store.text(DemoJobs.key("full")))).text();
    assertThat(
            store
                .store()
                .documents()
                .save(
                    new Draft(DemoJobs.key("full"), text, new Signature("Ina Roth", "")),
                    store.number(DemoJobs.key("full"))))
        .isInstanceOf(SaveResult.Saved.class);
  }

  private void complete() {
    jobs.complete("full", false);
    Deviation open =
        job().deviations().stream().filter(it -> it.why().isEmpty()).findFirst().orElseThrow();
    change(it -> it.settle(open, "it is shorter there"));
    ready();
  }

  private String ready() {
    for (int i = 0; i < 1200; i++) {
      String page = browser.get("/job/full").body();
      if (!page.contains("The kit is being planned")) {
        return page;
      }
      try {
        Thread.sleep(100);
      } catch (InterruptedException stopped) {
        Thread.currentThread().interrupt();
      }
    }
    throw new AssertionError("the kit was still being planned");
  }

  private void post(String path, String form) {
    HttpResponse<String> answer = browser.post(path, "who=Ben+Ortega&" + form);
    assertThat(answer.statusCode()).as(answer.body()).isEqualTo(303);
  }

  @Test
  void theyAreKeptAndNothingChangesThem() {
    complete();
    post("/job/full/sign", "when=2026-11-26");
    Map<String, String> named = job().signOff().map(SignOff::papers).orElse(Map.of());
    assertThat(named).containsOnlyKeys("as-fitted.pdf", "disclosure.pdf");
    byte[] fitted = browser.bytes(AS_FITTED).body();
    byte[] sheet = browser.bytes(DISCLOSURE).body();
    assertThat(new String(fitted, StandardCharsets.ISO_8859_1)).startsWith("%PDF");
    assertThat(named)
        .containsEntry("as-fitted.pdf", Papers.hash(fitted))
        .containsEntry("disclosure.pdf", Papers.hash(sheet));
    assertThat(browser.get("/job/full").body())
        .contains("As signed on 2026-11-26 by Ben Ortega")
        .doesNotContain("Drawn from another guide");

    // Without a release the plan is that of the documents as they are.
    change(it -> it.with("release", Optional.empty()));
    store.edit(DemoStore.VAN, "\"Ostveld Packer", "\"Ostveld Stacker", "Anna");
    assertThat(ready()).contains("As signed on 2026-11-26");
    assertThat(browser.bytes(AS_FITTED).body()).isEqualTo(fitted);
    assertThat(browser.bytes(DISCLOSURE).body()).isEqualTo(sheet);

    long signed = store.number(DemoJobs.key("full"));
    post("/job/full/reopen", "reason=wrong+serial+number");
    assertThat(browser.get("/job/full").body())
        .contains("Of the earlier sign-off on 2026-11-26 by Ben Ortega")
        .doesNotContain("As signed on");
    assertThat(browser.bytes(AS_FITTED).body()).isNotEqualTo(fitted);
    assertThat(browser.bytes(AS_FITTED + "?revision=" + signed).body()).isEqualTo(fitted);
    assertThat(browser.bytes(DISCLOSURE + "?revision=" + signed).body()).isEqualTo(sheet);
    assertThat(browser.get(DISCLOSURE + "?revision=1").statusCode()).isEqualTo(404);
    assertThat(browser.get(DISCLOSURE + "?revision=x").statusCode()).isEqualTo(404);

    assertThat(store.store().verify()).isEmpty();
    Path backup = folder.resolve("backup.zip");
    store.store().backup(backup);
    try (Store restored =
        Store.restore(backup, StoreTarget.parse(folder.resolve("again.db").toString()))) {
      assertThat(restored.papers().find(Papers.hash(fitted))).contains(fitted);
    }
  }

  /** Sign-offs of which no papers were kept are printed anew, and say what they are drawn from. */
  @Test
  void whereNoneAreKeptAnotherGuideIsSaid() {
    complete();
    change(
        it ->
            it.state(JobState.SIGNED_OFF)
                .with("guide", Optional.of("0123456789abcdef"))
                .signOff(Optional.of(new SignOff("Ben Ortega", "2026-11-26", Optional.empty()))));
    assertThat(ready())
        .contains("Drawn from another guide than the one followed")
        .doesNotContain("As signed on");
    assertThat(browser.bytes(AS_FITTED).statusCode()).isEqualTo(200);
  }

  /** A page that says why there is none must not end up on a disk as a paper. */
  @Test
  void withoutAPlanThereIsAnAnswerInWords() {
    jobs.complete("full", false);
    change(it -> it.release(9).with("guide", Optional.of("0123456789abcdef")));
    String page = ready();
    assertThat(page).contains("Release 9 of kit crew-comfort is not kept here");
    assertThat(page).doesNotContain(" download");
    for (String path : new String[] {AS_FITTED, DISCLOSURE, "/job/full/guide.html"}) {
      HttpResponse<String> answer = browser.get(path);
      assertThat(answer.statusCode()).isEqualTo(409);
      assertThat(answer.headers().firstValue("Content-Disposition")).isEqualTo(Optional.empty());
      assertThat(answer.body()).contains("No paper yet", "Release 9 of kit crew-comfort");
    }
  }
}
