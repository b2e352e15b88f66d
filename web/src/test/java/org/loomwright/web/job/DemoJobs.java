package org.loomwright.web.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import javax.imageio.ImageIO;
import org.loomwright.model.design.Plan;
import org.loomwright.model.design.Reading;
import org.loomwright.model.design.Step;
import org.loomwright.model.design.Verdict;
import org.loomwright.model.hand.GuideRecordMaker;
import org.loomwright.model.hand.GuideRecordTaker;
import org.loomwright.model.job.Deviation;
import org.loomwright.model.job.JobPhoto;
import org.loomwright.model.job.JobState;
import org.loomwright.model.job.SignOff;
import org.loomwright.model.job.Taken;
import org.loomwright.model.json.DocumentBinder;
import org.loomwright.model.json.GuideRecordText;
import org.loomwright.model.kit.KitOrder;
import org.loomwright.papers.hand.GuidePrint;
import org.loomwright.planner.plan.Planner;
import org.loomwright.planner.walk.GuideWalk;
import org.loomwright.store.DocumentKey;
import org.loomwright.store.Draft;
import org.loomwright.store.ReleaseDraft;
import org.loomwright.store.SaveResult;
import org.loomwright.store.Signature;
import org.loomwright.store.Store;
import org.loomwright.web.shop.Pinned;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Jobs with the demo's heater kit in several states, put into a store without the pages. */
public final class DemoJobs {
  public static final String KIT = "crew-comfort";

  /** One vehicle of the demo. */
  public static final Map<String, String> ANSWERS =
      Map.of("step-before", "none", "tow-prep", "no", "rear-feed", "yes", "floor-ground", "no");

  private static final Signature BY = new Signature("Ina Roth", "the test");

  private static final Map<KitOrder, Plan> PLANS = new ConcurrentHashMap<>();

  private final Store store;
  private final KitOrder order;
  private final Plan plan;

  private DemoJobs(Store store) {
    this.store = store;
    Pinned pinned = Pinned.of(store, KIT).orElseThrow();
    this.order = pinned.order();
    this.plan = PLANS.computeIfAbsent(order, Planner::plan);
    store
        .releases()
        .release(
            new ReleaseDraft(
                KIT, pinned.pins(), Verdict.HOLDS, Map.of("note.txt", new byte[] {'1'}), BY));
  }

  /** Releases the kit, without making its papers. */
  public static DemoJobs in(Store store) {
    return new DemoJobs(store);
  }

  public Plan plan() {
    return plan;
  }

  public KitOrder order() {
    return order;
  }

  /** Steps of the way of the vehicle. */
  public List<Step> way() {
    return GuideWalk.of(plan, order.vehicle(), ANSWERS).way();
  }

  /** What the guide in the hand would say of the job of a text. */
  public String record(String text) {
    Instant begun = Instant.parse("2026-11-26T09:12:00Z");
    return GuideRecordText.write(
        GuideRecordMaker.of(
            JobText.of(text).job(), plan, GuidePrint.of(plan), List.of(), begun, begun));
  }

  /** Values that hold, of some steps. */
  public List<Taken> values(List<Step> steps) {
    GuideWalk walk = GuideWalk.of(plan, order.vehicle(), ANSWERS);
    List<Taken> taken = new ArrayList<>();
    for (Step step : steps) {
      for (Reading it : step.readings()) {
        if (walk.holds(it.when()) && taken.stream().noneMatch(t -> t.reading().equals(it.id()))) {
          taken.add(new Taken(it.id(), it.name(), good(it), Optional.empty()));
        }
      }
    }
    return taken;
  }

  private static String good(Reading it) {
    return switch (it.kind()) {
      case WORDS -> "none";
      case WORKS -> "yes";
      case NUMBER ->
          it.band()
              .map(band -> band.low().or(band::high).orElseThrow() + " " + band.unit())
              .orElse("20 mA");
    };
  }

  private static JobText fresh(String id) {
    ObjectNode job = JsonNodeFactory.instance.objectNode();
    job.put("kind", "job").put("format", DocumentBinder.FORMAT).put("id", id);
    job.put("name", "OST 417: heater").put("revision", "1").put("kit", KIT);
    job.put("vehicle", "packer").put("vehicleNote", "OST 417");
    job.put("when", "2026-11-26").put("by", "Ben Ortega").put("state", "survey");
    job.putObject("answers");
    List.of("done", "taken", "deviations", "photos").forEach(job::putArray);
    return JobText.of(job.toString());
  }

  /** A job that is surveyed, of a kit that is not released. */
  public DemoJobs survey(String id) {
    return save(id, fresh(id).answer("step-before", "none"));
  }

  /** A job of the release on which so many steps are done. */
  public DemoJobs underWay(String id, int steps) {
    return save(id, begun(id, steps));
  }

  private JobText begun(String id, int steps) {
    List<Step> done = way().subList(0, steps);
    JobText job = fresh(id).release(1).state(JobState.UNDER_WAY);
    job.with("guide", Optional.of(GuidePrint.of(plan)));
    job.with("partNumber", Optional.of(plan.design().partNumbers().get(0).id()));
    job.with("serial", Optional.of("000017"));
    ANSWERS.forEach(job::answer);
    done.stream().filter(it -> it.ask().isEmpty()).forEach(it -> job.done(it.id(), true));
    values(done).forEach(job::taken);
    return job.taken(
        new Taken(
            GuideRecordTaker.MEASURED + "rear-feed",
            "feed of section B",
            "12.1 V",
            Optional.of("11.5 V or more")));
  }

  /** A job on which all is done, one value lies outside for a reason, with a photo and a note. */
  public DemoJobs complete(String id, boolean signed) {
    JobText job = begun(id, way().size());
    Step rest =
        way().stream()
            .filter(it -> it.readings().stream().anyMatch(r -> r.id().equals("rest-voltage")))
            .findFirst()
            .orElseThrow();
    job.taken(
        new Taken("rest-voltage", "battery rest voltage", "11.9 V", Optional.of("12.4 V or more")));
    job.deviation(
        new Deviation(
            Optional.of(rest.id()),
            "battery rest voltage: 11.9 V",
            Optional.of("battery weak after two weeks in the yard, charged over night"),
            Optional.empty()));
    store.pictures().put("jobs/" + id + "-1.jpg", photo(), 0, BY);
    job.photo(
        new JobPhoto("jobs/" + id + "-1.jpg", Optional.of("the battery"), Optional.of(rest.id())));
    if (signed) {
      job.state(JobState.SIGNED_OFF)
          .signOff(
              Optional.of(new SignOff("Ben Ortega", "2026-11-26", Optional.of("handed over"))));
    } else {
      job.deviation(
          new Deviation(
              Optional.of(way().get(20).id()),
              "the loom runs on the other side",
              Optional.empty(),
              Optional.empty()));
    }
    return save(id, job);
  }

  private DemoJobs save(String id, JobText job) {
    SaveResult result = store.documents().save(new Draft(key(id), job.text(), BY), 0);
    assertThat(result).isInstanceOf(SaveResult.Saved.class);
    return this;
  }

  public static DocumentKey key(String id) {
    return new DocumentKey("job", id);
  }

  /** A photo as a camera makes it. */
  public static byte[] photo() {
    BufferedImage image = new BufferedImage(320, 240, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.setColor(new Color(0x3a6b52));
    pen.fillRect(0, 0, 320, 240);
    pen.setColor(Color.ORANGE);
    pen.fillOval(90, 60, 140, 120);
    pen.dispose();
    try {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      ImageIO.write(image, "jpg", out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
