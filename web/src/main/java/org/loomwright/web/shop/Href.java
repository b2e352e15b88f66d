package org.loomwright.web.shop;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import org.loomwright.model.finding.FoundAt;

/** Addresses of pages. Whatever an id holds, the address is one. */
public final class Href {
  private Href() {}

  /** A vehicle. */
  public static String vehicle(String id) {
    return "/vehicle/" + part(id);
  }

  /** A connector or fuse block of a vehicle. */
  public static String face(String vehicle, String id) {
    return vehicle(vehicle) + "/face/" + part(id);
  }

  /** Where a pinout of a connector is pasted. */
  public static String paste(String vehicle, String id) {
    return face(vehicle, id) + "/paste";
  }

  /** Where a photo of a connector or fuse block is chosen and marked. */
  public static String photo(String vehicle, String id) {
    return face(vehicle, id) + "/photo";
  }

  /** All pictures. */
  public static String pictures() {
    return "/pictures";
  }

  /** A picture and what is known of it. */
  public static String picture(String name) {
    return "/pictures/of/" + part(name);
  }

  /** The bytes of a picture, which never change at this address. */
  public static String pictureFile(String name, String hash) {
    return "/pictures/file/" + part(name) + "?v=" + value(hash);
  }

  /** The map of a vehicle, to be worked on. */
  public static String map(String vehicle) {
    return vehicle(vehicle) + "/map";
  }

  /** Size and picture of a vehicle's plan view. */
  public static String planView(String vehicle) {
    return map(vehicle) + "/view";
  }

  /** A piece of equipment. */
  public static String equipment(String id) {
    return "/equipment/" + part(id);
  }

  /** A parts list. */
  public static String parts(String id) {
    return "/parts/" + part(id);
  }

  /** Rules. */
  public static String rules(String id) {
    return "/rules/" + part(id);
  }

  /** All findings. */
  public static String findings() {
    return "/findings";
  }

  /** Findings on a vehicle. */
  public static String findings(String vehicle) {
    return findings() + "?vehicle=" + value(vehicle);
  }

  /** Findings on a connector or fuse block of a vehicle. */
  public static String findings(String vehicle, String face) {
    return findings(vehicle) + "&on=" + value(face);
  }

  /** A finding. */
  public static String finding(String id) {
    return "/finding/" + part(id);
  }

  /** Where a form says what became of a finding. */
  public static String decide(String finding) {
    return finding(finding) + "/decide";
  }

  /** All kits that were made. */
  public static String stock() {
    return "/stock";
  }

  /** Kits that were made in one go. */
  public static String batch(String id) {
    return "/batch/" + part(id);
  }

  /** The guide of a kit as one file. */
  public static String handGuide(String kit) {
    return "/kit/" + part(kit) + "/guide.html";
  }

  /** The fit check of a kit. */
  public static String fitCheck(String kit) {
    return "/kit/" + part(kit) + "/fit-check.html";
  }

  /** How common the values of a vehicle's traits are. */
  public static String counts(String vehicle) {
    return vehicle(vehicle) + "/counts";
  }

  /** The form that takes a finding into its vehicle. */
  public static String into(String finding) {
    return finding(finding) + "/into";
  }

  /** Which kits a finding touches. */
  public static String impact(String finding) {
    return findings() + "/" + part(finding) + "/impact";
  }

  /** The form of a new finding on a vehicle. */
  public static String newFinding(String vehicle) {
    return "/new/finding?vehicle=" + value(vehicle);
  }

  /** The form of a new finding on a thing of a vehicle. */
  public static String newFinding(String vehicle, FoundAt at) {
    return newFinding(vehicle) + "&at=" + value(at.text());
  }

  /**
   * The form of a new finding on the vehicle of a job.
   *
   * @param step id of the step it was seen at; empty for none
   * @param was what was otherwise there; empty when it is still to be written
   */
  public static String findingOf(String job, String step, String was) {
    return "/new/finding?job=" + value(job) + "&step=" + value(step) + "&was=" + value(was);
  }

  /** All jobs. */
  public static String jobs() {
    return "/jobs";
  }

  /** Jobs with a kit. */
  public static String jobs(String kit) {
    return jobs() + "?kit=" + value(kit);
  }

  /** The form of a new job. */
  public static String newJob() {
    return "/new/job";
  }

  /** The form of a new job with a kit. */
  public static String newJob(String kit) {
    return newJob() + "?kit=" + value(kit);
  }

  /** A job. */
  public static String job(String id) {
    return "/job/" + part(id);
  }

  /** A page of a job, such as "survey". */
  public static String job(String id, String page) {
    return job(id) + "/" + page;
  }

  /** A step of the guide as a job takes it. */
  public static String jobStep(String id, int number) {
    return job(id, "steps") + "?step=" + number;
  }

  /** A stage of a kit. */
  public static String kit(String id, Stage stage) {
    return "/kit/" + part(id) + "/" + stage.key();
  }

  /** How the figure of a line of the checks was found. */
  public static String trace(String kit, int number) {
    return "/kit/" + part(kit) + "/sums/" + number;
  }

  /** The pack as one file. */
  public static String pack(String kit) {
    return "/kit/" + part(kit) + "/pack.zip";
  }

  /** Where a form stops the planning of a kit. */
  public static String stop(String kit) {
    return "/kit/" + part(kit) + "/stop";
  }

  /** Where a form begins the planning of a kit anew. */
  public static String again(String kit) {
    return "/kit/" + part(kit) + "/again";
  }

  /** Releases of a kit. */
  public static String release(String kit) {
    return "/kit/" + part(kit) + "/release";
  }

  /** The pack of a release as one file. */
  public static String releasedPack(String kit, long number) {
    return release(kit) + "/" + number + "/pack.zip";
  }

  /** Where a form says what is wished of a way. */
  public static String wish(String kit) {
    return "/kit/" + part(kit) + "/wish";
  }

  /** How far a kit is, as part of a page. */
  public static String verdict(String kit) {
    return "/kit/" + part(kit) + "/verdict";
  }

  /** A document of a kind, in a part of the pages. */
  private static String document(String root, String kind, String id) {
    return "/" + root + "/" + part(kind) + "/" + part(id);
  }

  /** All revisions of a document. */
  public static String history(String kind, String id) {
    return document("history", kind, id);
  }

  /** Two revisions of a document beside each other. */
  public static String compare(String kind, String id) {
    return document("compare", kind, id);
  }

  /** The page that shows a document of a kind. */
  public static String of(String kind, String id) {
    return switch (kind) {
      case "kit" -> kit(id, Stage.GAP);
      case "picture" -> "/pictures";
      default -> "/" + part(kind) + "/" + part(id);
    };
  }

  /** Where a form asks for an earlier text to be the newest again. */
  public static String goBack(String kind, String id) {
    return history(kind, id) + "/back";
  }

  /** Where a form asks for one revision to be taken back. */
  public static String undo(String kind, String id) {
    return history(kind, id) + "/undo";
  }

  /** Where a form takes a document out of use. */
  public static String retire(String kind, String id) {
    return history(kind, id) + "/retire";
  }

  /** A document as text. */
  public static String text(String kind, String id) {
    return document("text", kind, id);
  }

  /** A word that links can name within a page. */
  public static String anchor(String kind, String id) {
    return kind + "-" + part(id);
  }

  /**
   * An id as one part of an address: letters, digits and hyphens as they are, any other character
   * as its number between low lines. Different ids give different parts.
   */
  public static String part(String id) {
    StringBuilder safe = new StringBuilder();
    id.codePoints()
        .forEach(
            it -> {
              if (it == '-' || it < 128 && Character.isLetterOrDigit(it)) {
                safe.appendCodePoint(it);
              } else {
                safe.append('_').append(Integer.toHexString(it)).append('_');
              }
            });
    return safe.toString();
  }

  /** A word as the value of a parameter. */
  public static String value(String word) {
    return URLEncoder.encode(word, StandardCharsets.UTF_8);
  }
}
