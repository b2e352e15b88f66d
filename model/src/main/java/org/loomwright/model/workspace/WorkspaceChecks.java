package org.loomwright.model.workspace;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.model.condition.Condition;
import org.loomwright.model.document.Document;
import org.loomwright.model.equipment.Equipment;
import org.loomwright.model.finding.Finding;
import org.loomwright.model.job.Job;
import org.loomwright.model.kit.Kit;
import org.loomwright.model.parts.Parts;
import org.loomwright.model.picture.Pictures;
import org.loomwright.model.rules.Rules;
import org.loomwright.model.stock.Batch;
import org.loomwright.model.vehicle.Vehicle;

/** Checks the documents of a workspace against themselves and each other. */
final class WorkspaceChecks {
  /** Keys whose texts name something, so that conditions, spots and pins can refer to it. */
  private static final Set<String> NAMING_KEYS = Set.of("id", "number", "cavity");

  private WorkspaceChecks() {}

  /**
   * All problems beyond those found while binding.
   *
   * @param complete false when some files could not be read at all; what they might hold is not
   *     called missing then
   * @param pictures the pictures that could be read
   */
  static List<Problem> problems(List<Source> sources, boolean complete, Pictures pictures) {
    List<Problem> problems = new ArrayList<>();
    Library library = new Library(sources, complete, problems);
    uniqueDocuments(library, problems);
    for (Source source : sources) {
      source
          .bound()
          .document()
          .ifPresent(it -> check(it, new Scope(source, problems), library, pictures));
    }
    Serials.check(sources, problems);
    Currencies.check(sources, problems);
    return problems;
  }

  private static void uniqueDocuments(Library library, List<Problem> problems) {
    Map<List<Object>, String> seen = new HashMap<>();
    for (Library.Entry entry : library.entries()) {
      String first = seen.putIfAbsent(List.of(entry.sort(), entry.id()), entry.source().file());
      if (first != null) {
        problems.add(
            new Problem(
                entry.source().file(),
                "id",
                entry.id(),
                entry.sort().noun() + " with the id '" + entry.id() + "' is already in " + first));
      }
    }
  }

  private static void check(Document document, Scope scope, Library library, Pictures pictures) {
    names(scope);
    if (document instanceof Vehicle vehicle) {
      VehicleNames names = library.names(scope.source());
      VehicleChecks.check(scope, vehicle, names, library.parts(), pictures);
    } else if (document instanceof Equipment equipment) {
      EquipmentChecks.check(scope, equipment, library.parts());
    } else if (document instanceof Parts parts) {
      PartsChecks.check(scope, parts, library.parts(), pictures);
    } else if (document instanceof Rules rules) {
      RulesChecks.check(scope, rules);
    } else if (document instanceof Kit kit) {
      KitChecks.check(scope, kit, library);
    } else if (document instanceof Finding finding) {
      FindingChecks.check(scope, finding, library);
    } else if (document instanceof Job job) {
      JobChecks.check(scope, job, library);
    } else if (document instanceof Batch batch) {
      BatchChecks.check(scope, batch, library);
    }
  }

  private static void names(Scope scope) {
    List<Object> records = new ArrayList<>(scope.source().bound().paths().keySet());
    records.sort(Comparator.comparing(scope::path));
    for (Object owner : records) {
      for (RecordComponent component : owner.getClass().getRecordComponents()) {
        if (component.getType() == String.class && NAMING_KEYS.contains(component.getName())) {
          String name = text(owner, component);
          if (!name.isEmpty() && !Condition.isName(name)) {
            scope.problem(
                owner,
                component.getName(),
                name,
                "'"
                    + name
                    + "' can't be used as a name: it must start with a letter or digit, go on with"
                    + " letters, digits and - _ . / : and be no word of the conditions");
          }
        }
      }
    }
  }

  private static String text(Object owner, RecordComponent component) {
    try {
      return (String) component.getAccessor().invoke(owner);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("reading " + component, e);
    }
  }
}
