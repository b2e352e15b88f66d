package org.loomwright.model.finding;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.loomwright.model.vehicle.TellHow;

/**
 * A way in which builds differ that a finding brought to light: "as recorded" on some, "as found"
 * on the others.
 *
 * @param id id of the trait
 * @param name its name for people
 * @param usual builds that are as recorded, a clause such as "with a plug in cavity 6"
 * @param found builds that are as found, a clause
 * @param foundShare how common those are, in per cent; absent where nobody can say
 * @param how how to tell
 * @param place where
 * @param openings what must be open for that
 * @param effort time it takes, such as "1 min"
 * @param question what to look at, measure or ask
 * @param usualExpect what is seen then on builds as recorded
 * @param foundExpect what is seen on builds as found
 * @param tools tools needed
 * @param fact what differs
 * @param holds whether that is so on the builds as found
 */
public record NewTrait(
    String id,
    String name,
    String usual,
    String found,
    Optional<BigDecimal> foundShare,
    TellHow how,
    String place,
    List<String> openings,
    String effort,
    String question,
    String usualExpect,
    String foundExpect,
    List<String> tools,
    FactOf fact,
    boolean holds) {
  /** Value of builds that are as recorded. */
  public static final String AS_RECORDED = "as-recorded";

  /** Value of builds that are as found. */
  public static final String AS_FOUND = "as-found";

  public NewTrait {
    openings = List.copyOf(openings);
    tools = List.copyOf(tools);
  }
}
