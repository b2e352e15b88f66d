package org.loomwright.model.workspace;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.document.Document;
import org.loomwright.model.json.DocumentKind;
import org.loomwright.model.vehicle.Vehicle;
import tools.jackson.databind.JsonNode;

/** All documents of a workspace under check, by kind and id. */
final class Library {
  /** A document with its id as written. */
  record Entry(Source source, Sort sort, String id) {
    /** The document, if it could be read so far and is of this type. */
    <T extends Document> Optional<T> document(Class<T> type) {
      return source.bound().document().filter(type::isInstance).map(type::cast);
    }
  }

  private final List<Entry> entries = new ArrayList<>();
  private final Names documents;
  private final PartNames parts;
  private final boolean complete;
  private final List<Problem> problems;
  private final IdentityHashMap<Source, VehicleNames> vehicles = new IdentityHashMap<>();

  /**
   * @param complete false when some files could not be read at all
   * @param problems where problems go
   */
  Library(List<Source> sources, boolean complete, List<Problem> problems) {
    this.complete = complete;
    this.problems = problems;
    this.documents = new Names(complete);
    for (Source source : sources) {
      JsonNode id = source.tree().path("id");
      Optional<DocumentKind> kind = source.bound().kind();
      if (kind.isPresent() && id.isString() && !id.stringValue().isBlank()) {
        Entry entry = new Entry(source, sort(kind.get()), id.stringValue());
        entries.add(entry);
        documents.add(entry.sort(), List.of(entry.id()));
      }
    }
    this.parts =
        new PartNames(
            entries.stream().filter(it -> it.sort() == Sort.PARTS).map(Entry::source).toList(),
            complete);
  }

  private static Sort sort(DocumentKind kind) {
    return switch (kind) {
      case VEHICLE -> Sort.VEHICLE;
      case EQUIPMENT -> Sort.EQUIPMENT;
      case KIT -> Sort.KIT;
      case PARTS -> Sort.PARTS;
      case RULES -> Sort.RULES;
      case FINDING -> Sort.FINDING;
      case JOB -> Sort.JOB;
      case BATCH -> Sort.BATCH;
    };
  }

  List<Entry> entries() {
    return entries;
  }

  Names documents() {
    return documents;
  }

  PartNames parts() {
    return parts;
  }

  boolean complete() {
    return complete;
  }

  /** The first document of a sort with an id. */
  Optional<Entry> find(Sort sort, String id) {
    return entries.stream()
        .filter(entry -> entry.sort() == sort && entry.id().equals(id))
        .findFirst();
  }

  /** What a vehicle's ids name. */
  VehicleNames names(Entry vehicle) {
    return names(vehicle.source());
  }

  VehicleNames names(Source vehicle) {
    return vehicles.computeIfAbsent(
        vehicle,
        it ->
            new VehicleNames(
                it.tree(),
                it.bound().document().filter(Vehicle.class::isInstance).map(Vehicle.class::cast)));
  }

  Scope scope(Entry entry) {
    return new Scope(entry.source(), problems);
  }
}
