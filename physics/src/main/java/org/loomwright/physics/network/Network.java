package org.loomwright.physics.network;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.loomwright.physics.SumException;

/**
 * Elements joined at named nodes. Immutable; the nodes are those the elements name.
 *
 * @param reference the node that counts as 0 V; at least one element ends on it
 * @param elements the elements, each with a name of its own; their order is the order of all
 *     results
 */
public record Network(String reference, List<Element> elements) {
  /**
   * Checks the names.
   *
   * @throws SumException if a name occurs twice or no element ends on the reference node
   */
  public Network {
    elements = List.copyOf(elements);
    Set<String> names = new HashSet<>();
    boolean grounded = false;
    for (Element e : elements) {
      if (!names.add(e.name())) {
        throw new SumException("two elements of the network are named \"" + e.name() + "\"");
      }
      grounded |= e.from().equals(reference) || e.to().equals(reference);
    }
    if (!grounded) {
      throw new SumException(
          "no element of the network ends on its reference node \"" + reference + "\"");
    }
  }

  /** All nodes, the reference first, then in order of first mention. */
  public Set<String> nodes() {
    Set<String> nodes = new LinkedHashSet<>();
    nodes.add(reference);
    for (Element e : elements) {
      nodes.add(e.from());
      nodes.add(e.to());
    }
    return nodes;
  }

  /** All elements of one kind, in order. */
  public <T extends Element> List<T> all(Class<T> kind) {
    return elements.stream().filter(kind::isInstance).map(kind::cast).toList();
  }

  /**
   * The element of a name and kind.
   *
   * @throws SumException if there is none
   */
  public <T extends Element> T find(Class<T> kind, String name) {
    for (Element e : elements) {
      if (e.name().equals(name) && kind.isInstance(e)) {
        return kind.cast(e);
      }
    }
    throw new SumException(
        "the network has no "
            + kind.getSimpleName()
            + " named \""
            + name
            + "\"; it has "
            + String.join(", ", all(kind).stream().map(Element::name).toList()));
  }

  /**
   * The network without some elements, e.g. loads that are switched off or an open contact. Nodes
   * that no element names any more are gone.
   */
  public Network without(Collection<String> names) {
    Set<String> gone = new HashSet<>(names);
    return new Network(reference, elements.stream().filter(e -> !gone.contains(e.name())).toList());
  }

  /** The network with elements exchanged for those given under their names. */
  public Network with(Map<String, ? extends Element> others) {
    List<Element> changed = new ArrayList<>();
    for (Element e : elements) {
      Element other = others.get(e.name());
      changed.add(other == null ? e : other);
    }
    return new Network(reference, changed);
  }
}
