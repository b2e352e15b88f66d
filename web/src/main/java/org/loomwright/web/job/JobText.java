package org.loomwright.web.job;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.job.Deviation;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.JobPhoto;
import org.loomwright.model.job.JobState;
import org.loomwright.model.job.SignOff;
import org.loomwright.model.job.Taken;
import org.loomwright.model.json.DocumentBinder;
import org.loomwright.model.json.DocumentWriter;
import org.loomwright.model.json.JsonText;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The text of a job, changed part by part, so that what others changed meanwhile merges. */
public final class JobText {
  private static final String READING = "reading";
  private static final String ANSWERS = "answers";

  private final ObjectNode job;

  private JobText(ObjectNode job) {
    this.job = job;
  }

  /**
   * A text to be changed.
   *
   * @throws IllegalArgumentException when it is not the text of a document
   */
  public static JobText of(String text) {
    if (JsonText.parse(text) instanceof JsonText.Tree tree
        && tree.node() instanceof ObjectNode node) {
      return new JobText(node);
    }
    throw new IllegalArgumentException("not the text of a document");
  }

  /** The text as it is now. */
  public String text() {
    return job.toPrettyString() + "\n";
  }

  /**
   * The job as the text says it.
   *
   * @throws IllegalArgumentException when the text is not that of a job
   */
  public Job job() {
    if (DocumentBinder.bind(job).good().orElse(null) instanceof Job it) {
      return it;
    }
    throw new IllegalArgumentException("not the text of a job");
  }

  /** Makes it the text of a job. Lists that are empty stay, so that additions of others merge. */
  public JobText become(Job after) {
    ObjectNode written = of(DocumentWriter.write(after)).job;
    for (String key : List.copyOf(job.propertyNames())) {
      if (written.has(key)) {
        continue;
      }
      if (job.get(key).isArray()) {
        job.putArray(key);
      } else if (key.equals(ANSWERS)) {
        job.putObject(key);
      } else {
        job.remove(key);
      }
    }
    written.properties().forEach(it -> job.set(it.getKey(), it.getValue()));
    return this;
  }

  /** Sets a plain field; an absent value takes it out. */
  public JobText with(String key, Optional<String> value) {
    value.ifPresentOrElse(it -> job.put(key, it), () -> job.remove(key));
    return this;
  }

  /** Sets the number of the release. */
  public JobText release(int number) {
    job.put("release", number);
    return this;
  }

  /** Sets how far it has come. */
  public JobText state(JobState state) {
    job.put("state", state.words().replace(' ', '-'));
    return this;
  }

  /** Sets the answer to a question. */
  public JobText answer(String trait, String value) {
    job.withObjectProperty(ANSWERS).put(trait, value);
    return this;
  }

  /** Says that a step is done, or not. */
  public JobText done(String step, boolean done) {
    ArrayNode steps = list("done");
    for (int i = steps.size() - 1; i >= 0; i--) {
      if (steps.get(i).asString("").equals(step)) {
        if (done) {
          return this;
        }
        steps.remove(i);
      }
    }
    if (done) {
      steps.add(step);
    }
    return this;
  }

  /** Writes a value down in place of what stood there. */
  public JobText taken(Taken value) {
    ObjectNode one = item("taken", READING, value.reading());
    one.put("name", value.name()).put("value", value.value());
    value.wanted().ifPresentOrElse(it -> one.put("wanted", it), () -> one.remove("wanted"));
    return this;
  }

  /** Takes a value out. */
  public JobText withoutTaken(String reading) {
    ArrayNode all = list("taken");
    for (int i = all.size() - 1; i >= 0; i--) {
      if (all.get(i).path(READING).asString("").equals(reading)) {
        all.remove(i);
      }
    }
    return this;
  }

  /** Adds a deviation. */
  public JobText deviation(Deviation it) {
    ObjectNode one = list("deviations").addObject();
    it.step().ifPresent(step -> one.put("step", step));
    one.put("was", it.was());
    it.why().ifPresent(why -> one.put("why", why));
    it.finding().ifPresent(finding -> one.put("finding", finding));
    return this;
  }

  /** Gives a deviation its reason; nothing happens when there is no such deviation. */
  public JobText settle(Deviation which, String why) {
    find(which).ifPresent(it -> it.put("why", why));
    return this;
  }

  /** Names the finding that was made of a deviation. */
  public JobText finding(Deviation which, String finding) {
    find(which).ifPresent(it -> it.put("finding", finding));
    return this;
  }

  private Optional<ObjectNode> find(Deviation which) {
    for (JsonNode it : list("deviations")) {
      if (it instanceof ObjectNode one
          && one.path("was").asString("").equals(which.was())
          && one.path("step").asString("").equals(which.step().orElse(""))) {
        return Optional.of(one);
      }
    }
    return Optional.empty();
  }

  /** Adds a photo. */
  public JobText photo(JobPhoto photo) {
    ObjectNode one = item("photos", "file", photo.file());
    photo.shows().ifPresent(it -> one.put("shows", it));
    photo.step().ifPresent(it -> one.put("step", it));
    return this;
  }

  /** Signs it, or takes the signature off. */
  public JobText signOff(Optional<SignOff> signOff) {
    if (signOff.isEmpty()) {
      job.remove("signOff");
      return this;
    }
    ObjectNode one = job.putObject("signOff");
    one.put("by", signOff.get().by()).put("when", signOff.get().when());
    signOff.get().words().ifPresent(it -> one.put("words", it));
    if (!signOff.get().papers().isEmpty()) {
      ObjectNode papers = one.putObject("papers");
      signOff.get().papers().forEach(papers::put);
    }
    return this;
  }

  private ArrayNode list(String key) {
    return job.withArrayProperty(key);
  }

  private ObjectNode item(String list, String key, String name) {
    for (JsonNode it : list(list)) {
      if (it instanceof ObjectNode one && one.path(key).asString("").equals(name)) {
        return one;
      }
    }
    return list(list).addObject().put(key, name);
  }
}
