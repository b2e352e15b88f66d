package org.loomwright.drawing.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.loomwright.drawing.board.BoardTree.Branch;
import org.loomwright.drawing.board.BoardTree.End;
import org.loomwright.drawing.board.BoardTree.EndKind;
import org.loomwright.drawing.board.BoardTree.Junction;
import org.loomwright.drawing.board.BoardTree.Mark;
import org.loomwright.drawing.board.BoardTree.MarkKind;
import org.loomwright.drawing.board.BoardTree.Node;
import org.loomwright.drawing.board.BoardTree.Splice;

/** Trees to try, drawn by lot or made by hand. */
final class Trees {
  private Trees() {}

  /** A tree with so many branches; the same seed gives the same tree. */
  static BoardTree random(long seed, int branchCount) {
    Random random = new Random(seed);
    // Some trees are long-limbed, some bushy, some stars.
    int reach = 1 + random.nextInt(8);
    double longest = List.of(300.0, 900.0, 3000.0).get(random.nextInt(3));
    int[] parents = new int[branchCount + 1];
    int[] degrees = new int[branchCount + 1];
    for (int i = 1; i <= branchCount; i++) {
      parents[i] = Math.max(0, i - 1 - random.nextInt(Math.min(i, reach)));
      degrees[i]++;
      degrees[parents[i]]++;
    }
    List<Node> nodes = new ArrayList<>();
    for (int i = 0; i <= branchCount; i++) {
      nodes.add(degrees[i] > 1 ? new Junction("J" + i) : end("X" + i, random));
    }
    List<Branch> branches = new ArrayList<>();
    for (int i = 1; i <= branchCount; i++) {
      double length = 30 + random.nextDouble() * random.nextDouble() * (longest - 30);
      String from = nodes.get(parents[i]).name();
      String to = nodes.get(i).name();
      boolean turned = random.nextBoolean();
      branches.add(
          new Branch(
              "B" + i,
              turned ? to : from,
              turned ? from : to,
              length,
              2 + random.nextInt(14) * random.nextDouble()));
    }
    List<Splice> splices = new ArrayList<>();
    List<Mark> marks = new ArrayList<>();
    for (Branch branch : branches) {
      if (random.nextInt(3) == 0) {
        splices.add(
            new Splice(
                "S" + splices.size(), branch.name(), random.nextDouble() * branch.lengthMm()));
      }
      if (random.nextInt(3) == 0) {
        marks.add(
            new Mark(
                random.nextBoolean() ? MarkKind.LABEL : MarkKind.TAPE,
                branch.name(),
                branch.lengthMm() / 2,
                20,
                "M" + marks.size()));
      }
    }
    return new BoardTree("seed " + seed, nodes, branches, splices, marks);
  }

  private static End end(String name, Random random) {
    boolean isStud = random.nextInt(4) == 0;
    return isStud
        ? new End(name, EndKind.STUD, 16, 16, 0, 0)
        : new End(
            name,
            EndKind.CONNECTOR,
            15 + random.nextInt(50),
            12 + random.nextInt(30),
            random.nextBoolean() ? 60 : 0,
            10 + random.nextInt(40));
  }

  static End connector(String name) {
    return new End(name, EndKind.CONNECTOR, 42, 26, 70, 34);
  }

  static End stud(String name) {
    return new End(name, EndKind.STUD, 16, 16, 0, 0);
  }

  /** A trailer feed: one trunk with three branches off it. */
  static BoardTree small() {
    return new BoardTree(
        "Trailer feed",
        List.of(
            connector("X1 fuse block"),
            new Junction("J1"),
            new Junction("J2"),
            new Junction("J3"),
            connector("X2 module"),
            stud("G1"),
            connector("X3 socket"),
            stud("F1")),
        List.of(
            new Branch("W1", "X1 fuse block", "J1", 320, 9),
            new Branch("W2", "J1", "J2", 410, 8),
            new Branch("W3", "J2", "J3", 250, 8),
            new Branch("W4", "J3", "X3 socket", 480, 7),
            new Branch("W5", "J1", "X2 module", 260, 6),
            new Branch("W6", "J2", "G1", 180, 4),
            new Branch("W7", "J3", "F1", 220, 4)),
        List.of(
            new Splice("S1", "W2", 120), new Splice("S2", "W2", 160), new Splice("S3", "W4", 90)),
        List.of(
            new Mark(MarkKind.LABEL, "W1", 60, 25, "TRAILER FEED"),
            new Mark(MarkKind.TAPE, "W3", 125, 40, "cloth tape"),
            new Mark(MarkKind.LABEL, "W4", 430, 25, "X3")));
  }
}
