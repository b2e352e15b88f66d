package org.loomwright.model.workspace;

import java.util.List;
import java.util.Optional;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.finding.Finding;
import org.loomwright.model.job.Job;
import org.loomwright.model.job.JobState;
import org.loomwright.model.job.VehicleNote;
import org.loomwright.model.kit.Kit;
import org.loomwright.model.parts.Parts;
import org.loomwright.model.picture.Pictures;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.stock.Batch;
import org.loomwright.model.vehicle.Vehicle;

/**
 * All documents of a folder. A workspace that was read without problems has no dangling references.
 *
 * @param vehicles vehicles
 * @param equipment equipment
 * @param kits kits
 * @param parts parts
 * @param rules rules
 * @param findings what was seen on real vehicles
 * @param jobs vehicles that kits were or are being fitted to
 * @param batches kits that were made
 * @param pictures pictures the documents name
 */
public record Workspace(
    List<Vehicle> vehicles,
    List<Equipment> equipment,
    List<Kit> kits,
    List<Parts> parts,
    List<Rules> rules,
    List<Finding> findings,
    List<Job> jobs,
    List<Batch> batches,
    Pictures pictures) {
  public Workspace {
    vehicles = List.copyOf(vehicles);
    equipment = List.copyOf(equipment);
    kits = List.copyOf(kits);
    parts = List.copyOf(parts);
    rules = List.copyOf(rules);
    findings = List.copyOf(findings);
    jobs = List.copyOf(jobs);
    batches = List.copyOf(batches);
  }

  /** No documents at all. */
  public static Workspace empty() {
    return new Workspace(
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        Pictures.none());
  }

  /**
   * Number of vehicles a kit was fitted to by a guide and signed for. A vehicle with several jobs
   * counts once; it is known by its note.
   *
   * @param release the release that the guide is of; absent when it is of none
   * @param print fingerprint of the guide; jobs that followed the same guide count whatever their
   *     release
   */
  public int fitted(String kit, Optional<Integer> release, String print) {
    return (int)
        jobs.stream()
            .filter(it -> it.kit().equals(kit) && it.state() == JobState.SIGNED_OFF)
            .filter(
                it ->
                    it.guide().filter(print::equals).isPresent()
                        || (release.isPresent() && it.release().equals(release)))
            .map(Workspace::vehicle)
            .distinct()
            .count();
  }

  private static String vehicle(Job job) {
    String note = VehicleNote.key(job.vehicleNote());
    return note.isEmpty() ? "job " + job.id() : "note " + note;
  }
}
