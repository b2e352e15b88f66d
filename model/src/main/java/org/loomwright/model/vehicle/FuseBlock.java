package org.loomwright.model.vehicle;

import java.util.List;
import java.util.Optional;

/**
 * A fuse block.
 *
 * @param id name used in references
 * @param name name for people
 * @param place where it is
 * @param openings what must be open to reach its wire side
 * @param view how the fitter sees it
 * @param face housing part that shows its slots as cavities, where one is on file
 * @param recipe how a terminal is put into it
 * @param sections bus bars
 * @param slots slots
 * @param photo photo of its face as it sits in the vehicle; needs {@code face}
 */
public record FuseBlock(
    String id,
    String name,
    String place,
    List<String> openings,
    View view,
    Optional<String> face,
    ServiceRecipe recipe,
    List<Section> sections,
    List<Slot> slots,
    Optional<FacePhoto> photo) {
  public FuseBlock {
    openings = List.copyOf(openings);
    sections = List.copyOf(sections);
    slots = List.copyOf(slots);
  }

  /** A fuse block without a photo. */
  public FuseBlock(
      String id,
      String name,
      String place,
      List<String> openings,
      View view,
      Optional<String> face,
      ServiceRecipe recipe,
      List<Section> sections,
      List<Slot> slots) {
    this(id, name, place, openings, view, face, recipe, sections, slots, Optional.empty());
  }

  /** The section with this id. */
  public Optional<Section> section(String sectionId) {
    return sections.stream().filter(section -> section.id().equals(sectionId)).findFirst();
  }

  /** The slot with this id. */
  public Optional<Slot> slot(String slotId) {
    return slots.stream().filter(slot -> slot.id().equals(slotId)).findFirst();
  }
}
