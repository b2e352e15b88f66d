package org.loomwright.model.equipment;

import java.util.List;
import org.loomwright.model.document.Document;

/**
 * The thing to be fitted.
 *
 * @param id name used in references
 * @param name name for people
 * @param revision revision of this document
 * @param plugs plugs
 * @param modules modules it needs
 * @param coding coding of control units it needs
 */
public record Equipment(
    String id,
    String name,
    String revision,
    List<Plug> plugs,
    List<Demand> modules,
    List<Demand> coding)
    implements Document {
  public Equipment {
    plugs = List.copyOf(plugs);
    modules = List.copyOf(modules);
    coding = List.copyOf(coding);
  }
}
