package org.loomwright.planner.tree;

import java.util.List;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;
import org.jgrapht.graph.WeightedMultigraph;

/** The same links for the algorithms of JGraphT. */
final class Peer {
  private Peer() {}

  /** With parallel links, without loops. */
  static WeightedMultigraph<String, Link> multi(List<Link> links) {
    WeightedMultigraph<String, Link> graph = new WeightedMultigraph<>(Link.class);
    for (Link link : links) {
      graph.addVertex(link.from());
      graph.addVertex(link.to());
      if (!link.from().equals(link.to())) {
        graph.addEdge(link.from(), link.to(), link);
        graph.setEdgeWeight(link, link.cost());
      }
    }
    return graph;
  }

  /** With the cheapest of parallel links only. */
  static SimpleWeightedGraph<String, DefaultWeightedEdge> simple(List<Link> links) {
    SimpleWeightedGraph<String, DefaultWeightedEdge> graph =
        new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
    for (Link link : links) {
      graph.addVertex(link.from());
      graph.addVertex(link.to());
      if (!link.from().equals(link.to())) {
        DefaultWeightedEdge there = graph.getEdge(link.from(), link.to());
        if (there == null) {
          graph.setEdgeWeight(graph.addEdge(link.from(), link.to()), link.cost());
        } else {
          graph.setEdgeWeight(there, Math.min(graph.getEdgeWeight(there), link.cost()));
        }
      }
    }
    return graph;
  }
}
