package org.loomwright.model.json;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.document.Document;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.finding.Finding;
import org.loomwright.model.job.Job;
import org.loomwright.model.kit.Kit;
import org.loomwright.model.parts.Parts;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.stock.Batch;
import org.loomwright.model.vehicle.Vehicle;

/** The kinds of documents, as the key "kind" names them. */
public enum DocumentKind {
  VEHICLE("vehicle", "a vehicle", Vehicle.class),
  EQUIPMENT("equipment", "a piece of equipment", Equipment.class),
  KIT("kit", "a kit", Kit.class),
  PARTS("parts", "a parts list", Parts.class),
  RULES("rules", "a set of rules", Rules.class),
  FINDING("finding", "a finding", Finding.class),
  JOB("job", "a job", Job.class),
  BATCH("batch", "a batch", Batch.class);

  private final String word;
  private final String noun;
  private final Class<? extends Document> type;

  DocumentKind(String word, String noun, Class<? extends Document> type) {
    this.word = word;
    this.noun = noun;
    this.type = type;
  }

  /** The word in the document. */
  public String word() {
    return word;
  }

  /** For people, with article. */
  public String noun() {
    return noun;
  }

  /** The record that holds a document of this kind. */
  public Class<? extends Document> type() {
    return type;
  }

  /** The kind with this word. */
  public static Optional<DocumentKind> of(String word) {
    return Arrays.stream(values()).filter(kind -> kind.word.equals(word)).findFirst();
  }

  /** The kind of a document. */
  public static DocumentKind of(Document document) {
    return Arrays.stream(values())
        .filter(kind -> kind.type.isInstance(document))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("no kind for " + document.getClass()));
  }

  /** All words. */
  public static List<String> words() {
    return Arrays.stream(values()).map(DocumentKind::word).toList();
  }
}
