package org.loomwright.drawing.board.kit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.loomwright.drawing.board.Board;
import org.loomwright.drawing.board.BoardTree;
import org.loomwright.drawing.board.BoardTree.Branch;
import org.loomwright.drawing.board.BoardTree.End;
import org.loomwright.drawing.board.BoardTree.EndKind;
import org.loomwright.drawing.board.BoardTree.Junction;
import org.loomwright.drawing.board.BoardTree.Splice;
import org.loomwright.drawing.board.BoardWords.Inset;
import org.loomwright.drawing.board.kit.HarnessGraph.Edge;
import org.loomwright.drawing.board.kit.HarnessGraph.Node;
import org.loomwright.drawing.board.kit.HarnessGraph.Sort;
import org.loomwright.drawing.board.kit.HarnessGraph.Stretch;
import org.loomwright.model.design.Plan;
import org.loomwright.model.kit.KitOrder;

/** Makes the tree for the board of a harness, with what is drawn and said at it. */
final class TreeMaker {
  private final KitOrder order;
  private final EndNames names;
  private final EndMaker ends;

  TreeMaker(Plan plan, KitOrder order, EndNames names, Board board) {
    this.order = order;
    this.names = names;
    this.ends = new EndMaker(plan, order, names, board);
  }

  /** A tree and what belongs to it; maps as in {@link HarnessBoard}. */
  record Made(
      BoardTree tree,
      Map<String, Inset> insets,
      Map<String, String> branchWords,
      Map<String, String> tails,
      Map<String, String> joints,
      Map<String, String> places,
      List<String> notes) {}

  Made make(String name, HarnessGraph graph) {
    Map<Node, Integer> degrees = new LinkedHashMap<>();
    for (Edge edge : graph.edges()) {
      degrees.merge(edge.from(), 1, Integer::sum);
      degrees.merge(edge.to(), 1, Integer::sum);
    }
    List<BoardTree.Node> nodes = new ArrayList<>();
    Map<String, Inset> insets = new LinkedHashMap<>();
    Map<String, String> tails = new LinkedHashMap<>();
    Map<String, String> joints = new LinkedHashMap<>();
    Map<String, String> places = new LinkedHashMap<>();
    degrees.forEach(
        (node, degree) -> {
          String called = names.node(node);
          switch (node.sort()) {
            case PLACE -> places.put(node.id(), called);
            case TAIL -> tails.put(node.id(), called);
            case JOINT -> joints.put(node.id(), called);
          }
          if (degree > 1) {
            nodes.add(new Junction(called));
          } else {
            EndMaker.Made end = end(node, called);
            nodes.add(end.end());
            insets.put(called, end.inset());
          }
        });

    List<Branch> branches = new ArrayList<>();
    List<Splice> splices = new ArrayList<>();
    List<BoardTree.Mark> marks = new ArrayList<>();
    Map<String, String> branchWords = new LinkedHashMap<>();
    for (Edge edge : graph.edges()) {
      String called = "B" + (branches.size() + 1);
      branches.add(
          new Branch(
              called,
              names.node(edge.from()),
              names.node(edge.to()),
              edge.lengthMm(),
              edge.diameterMm()));
      branchWords.put(called, words(edge));
      for (HarnessGraph.On on : edge.joints()) {
        String splice = names.joint(on.joint());
        splices.add(new Splice(splice, called, on.atMm()));
        joints.put(on.joint(), splice);
      }
      marks.addAll(
          BranchMarks.of(
              called,
              edge,
              labels(edge.from()),
              labels(edge.to()),
              isBreakout(degrees, edge.from()),
              isBreakout(degrees, edge.to())));
    }
    return new Made(
        new BoardTree(name, nodes, branches, splices, marks),
        insets,
        branchWords,
        tails,
        joints,
        places,
        List.of());
  }

  private static boolean isBreakout(Map<Node, Integer> degrees, Node node) {
    return degrees.getOrDefault(node, 0) > 1;
  }

  private EndMaker.Made end(Node node, String called) {
    return switch (node.sort()) {
      case TAIL -> ends.tail(node.id(), called);
      case JOINT -> ends.joint(node.id(), called);
      case PLACE -> {
        EndSymbols.Symbol turn = EndSymbols.turn();
        End end = new End(called, EndKind.OPEN, turn.widthMm(), turn.heightMm(), 0, 0);
        yield new EndMaker.Made(end, new Inset(Optional.of(turn.svg()), Optional.empty()));
      }
    };
  }

  /** Labels of the leads that end at a tail; none for other nodes. */
  private List<String> labels(Node node) {
    if (node.sort() != Sort.TAIL) {
      return List.of();
    }
    return ends.found(node.id()).ends().stream()
        .map(end -> names.lead(end.lead()).map(lead -> lead.label()).orElse(end.lead()))
        .toList();
  }

  private String words(Edge edge) {
    Set<String> coverings = new LinkedHashSet<>();
    for (Stretch stretch : edge.stretches()) {
      stretch.covering().map(this::covering).ifPresent(coverings::add);
    }
    return String.format(Locale.ROOT, "Ø %.1f", edge.diameterMm())
        + coverings.stream().map(it -> ", " + it).collect(Collectors.joining());
  }

  private String covering(String part) {
    return order.parts().coverings().stream()
        .filter(it -> it.id().equals(part))
        .findFirst()
        .map(it -> it.name())
        .orElse(part);
  }
}
