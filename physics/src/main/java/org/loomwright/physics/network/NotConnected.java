package org.loomwright.physics.network;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Parts of the network hang on nothing: no source, link or resistor joins them to the reference
 * node, so their voltages are not determined. A load of constant current or power fixes no voltage
 * and joins nothing.
 *
 * @param parts the floating parts, at least one
 */
public record NotConnected(List<Part> parts) implements NetworkOutcome {
  /** Copies the parts. */
  public NotConnected {
    parts = List.copyOf(parts);
  }

  /**
   * @param nodes nodes of one floating part, in order of mention
   * @param elements names of all elements that end on them
   */
  public record Part(List<String> nodes, List<String> elements) {
    /** Copies the lists. */
    public Part {
      nodes = List.copyOf(nodes);
      elements = List.copyOf(elements);
    }
  }

  @Override
  public String message() {
    return parts.stream()
        .map(
            p ->
                "floating, joined to the reference by nothing that conducts: node "
                    + String.join(", ", p.nodes())
                    + " (with "
                    + String.join(", ", p.elements())
                    + ")")
        .collect(Collectors.joining("; "));
  }
}
