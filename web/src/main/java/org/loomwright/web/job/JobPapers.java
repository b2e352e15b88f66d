package org.loomwright.web.job;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.JobState;
import org.loomwright.model.job.SignOff;
import org.loomwright.papers.job.GuideFollowed;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Revision;
import org.loomwright.store.Store;
import org.loomwright.store.Version;
import org.loomwright.web.shop.Href;

/**
 * Which papers of a job there are.
 *
 * @param signed the sign-off that counts; empty when the job is not signed off
 * @param kept whether its papers are kept as they were signed, and so are not made anew
 * @param warning what a reader of papers made anew has to know; empty for nothing
 * @param earlier earlier sign-offs, after which the job was opened again, newest first
 */
public record JobPapers(
    Optional<SignOff> signed, boolean kept, String warning, List<Earlier> earlier) {
  public JobPapers {
    earlier = List.copyOf(earlier);
  }

  /**
   * An earlier sign-off.
   *
   * @param revision number of the revision it is in
   * @param signOff the sign-off
   */
  public record Earlier(long revision, SignOff signOff) {
    /** Address of a paper of it. */
    public String href(String job, String name) {
      return Href.job(job, name) + "?revision=" + revision;
    }
  }

  /** Those of a job. */
  public static JobPapers of(JobView view, Optional<Store> store) {
    Job job = view.job();
    Optional<SignOff> signed = job.signOff().filter(it -> job.state() == JobState.SIGNED_OFF);
    boolean kept =
        bytes(signed, SignedPapers.AS_FITTED, store).isPresent()
            && bytes(signed, SignedPapers.DISCLOSURE, store).isPresent();
    String warning =
        kept
            ? ""
            : view.work()
                .flatMap(it -> GuideFollowed.warning(job, it.pages().plan()))
                .filter(it -> job.state() != JobState.SURVEY)
                .orElse("");
    return new JobPapers(
        signed,
        kept,
        warning,
        store.stream()
            .flatMap(it -> earlier(it, view).stream())
            .filter(it -> !signed.map(SignOff::papers).equals(Optional.of(it.signOff().papers())))
            .toList());
  }

  /**
   * A paper as it was signed.
   *
   * @return empty where none of this name was signed, or it is not kept here
   */
  public static Optional<byte[]> bytes(
      Optional<SignOff> signOff, String name, Optional<Store> store) {
    return signOff
        .map(it -> it.papers().getOrDefault(name, ""))
        .flatMap(hash -> store.flatMap(it -> it.papers().find(hash)));
  }

  /** The sign-off in a revision of a job; empty when there is none. */
  public static Optional<SignOff> signOff(Store store, String job, long revision) {
    return store
        .documents()
        .version(key(job), revision)
        .map(Version::content)
        .flatMap(SignedPapers::job)
        .flatMap(Job::signOff);
  }

  private static List<Earlier> earlier(Store store, JobView view) {
    return store.documents().history(key(view.job().id())).stream()
        .filter(it -> !it.papers().isEmpty())
        .map(Revision::number)
        .flatMap(
            it -> signOff(store, view.job().id(), it).map(one -> new Earlier(it, one)).stream())
        .toList();
  }

  private static DocumentKey key(String job) {
    return new DocumentKey("job", job);
  }
}
