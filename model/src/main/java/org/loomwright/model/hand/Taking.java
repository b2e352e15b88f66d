package org.loomwright.model.hand;

import java.util.List;
import org.loomwright.model.json.Fault;

/** What became of a record that was held against a guide. */
public sealed interface Taking {
  /**
   * All of it is understood.
   *
   * @param parts what a job takes from it
   */
  record Good(JobParts parts) implements Taking {}

  /**
   * Some of it does not belong to this guide.
   *
   * @param faults what, with the key in the record
   */
  record Bad(List<Fault> faults) implements Taking {
    public Bad {
      faults = List.copyOf(faults);
    }
  }
}
