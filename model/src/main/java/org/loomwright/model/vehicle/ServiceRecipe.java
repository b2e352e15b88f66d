package org.loomwright.model.vehicle;

import java.util.List;
import java.util.Optional;

/**
 * How a housing or block is opened, filled and closed.
 *
 * @param unlock how the secondary lock is opened, as an instruction
 * @param fill how a terminal is put in
 * @param fillUndo whether a terminal can come out again
 * @param lock how the secondary lock is closed
 * @param tools tools needed
 */
public record ServiceRecipe(
    Optional<String> unlock,
    String fill,
    Undo fillUndo,
    Optional<String> lock,
    List<String> tools) {
  public ServiceRecipe {
    tools = List.copyOf(tools);
  }
}
