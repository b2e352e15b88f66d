package org.loomwright.web.job;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.JobState;
import org.loomwright.model.job.SignOff;
import org.loomwright.model.json.DocumentBinder;
import org.loomwright.model.json.JsonText;
import org.loomwright.model.picture.Pictures;
import org.loomwright.papers.job.AsFitted;
import org.loomwright.papers.job.DisclosureSheet;
import org.loomwright.store.Papers;
import org.loomwright.web.shop.KitPages;

/**
 * A job signed off, with the papers made of it. They are kept as they are: what changes later, in
 * the kit, the vehicle or this program, does not change what was handed over.
 *
 * @param text text of the job, which names the papers by their hashes
 * @param papers name of the file to its bytes
 */
public record SignedPapers(String text, Map<String, byte[]> papers) {
  /** What was fitted. */
  public static final String AS_FITTED = "as-fitted.pdf";

  /** The sheet for the owner. */
  public static final String DISCLOSURE = "disclosure.pdf";

  /**
   * Signs a text. One that is no job is signed without papers; it can't be saved anyway.
   *
   * @param text text of the job as it is
   * @param pages what it was worked by
   * @param pictures photos of the job, by file
   * @throws IOException when a paper can't be made
   */
  public static SignedPapers of(String text, SignOff signOff, KitPages pages, Pictures pictures)
      throws IOException {
    String signed = signed(text, signOff);
    Optional<Job> job = job(signed);
    if (job.isEmpty()) {
      return new SignedPapers(signed, Map.of());
    }
    Map<String, byte[]> papers = new LinkedHashMap<>();
    papers.put(AS_FITTED, AsFitted.pdf(job.get(), pages.order(), pages.plan(), pictures));
    papers.put(DISCLOSURE, DisclosureSheet.pdf(job.get(), pages.order(), pages.plan()));
    Map<String, String> hashes = new LinkedHashMap<>();
    papers.forEach((name, bytes) -> hashes.put(name, Papers.hash(bytes)));
    SignOff kept = new SignOff(signOff.by(), signOff.when(), signOff.words(), hashes);
    return new SignedPapers(signed(text, kept), papers);
  }

  private static String signed(String text, SignOff signOff) {
    return JobText.of(text).state(JobState.SIGNED_OFF).signOff(Optional.of(signOff)).text();
  }

  /** The job of a text; empty when it is none. */
  static Optional<Job> job(String text) {
    return JsonText.parse(text) instanceof JsonText.Tree tree
            && DocumentBinder.bind(tree.node()).good().orElse(null) instanceof Job job
        ? Optional.of(job)
        : Optional.empty();
  }
}
