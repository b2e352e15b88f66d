package org.loomwright.physics.network;

import java.util.Arrays;
import java.util.Locale;
import org.ejml.data.DMatrixRMaj;
import org.ejml.data.DMatrixSparseCSC;
import org.ejml.interfaces.linsol.LinearSolverSparse;
import org.ejml.sparse.FillReducing;
import org.ejml.sparse.csc.factory.LinearSolverFactory_DSCC;
import org.loomwright.physics.SumException;

/**
 * Node equations of a set of conductances: sparse Cholesky factors of the conductance matrix, in
 * our own order of elimination. The library's own reordering is not used: it has been seen to give
 * wrong answers without a word. Every solution is put back into the equations and refined; one that
 * does not satisfy them is refused.
 *
 * <p>Not shared between threads.
 */
final class SparseSystem {
  /** Number of the reference node. */
  static final int REFERENCE = -1;

  private static final int REFINEMENTS = 3;
  private static final double RELATIVE_RESIDUAL = 1e-9;

  /** Residual that double precision allows per unit of conductance times voltage. */
  private static final double ROUNDING = 64 * Math.ulp(1.0);

  private final int nodes;
  private final int[] from;
  private final int[] to;
  private final int[] position;
  private final DMatrixSparseCSC matrix;
  private final int[] slots;
  private final LinearSolverSparse<DMatrixSparseCSC, DMatrixRMaj> solver =
      LinearSolverFactory_DSCC.cholesky(FillReducing.NONE);
  private double[] conductanceS;

  /**
   * @param nodes number of nodes without the reference
   * @param from first node of each edge, or {@link #REFERENCE}
   * @param to second node of each edge, or {@link #REFERENCE}
   */
  SparseSystem(int nodes, int[] from, int[] to) {
    this.nodes = nodes;
    this.from = from.clone();
    this.to = to.clone();
    this.conductanceS = new double[from.length];
    int[][] neighbours = neighbours();
    int[] order = EliminationOrder.minimumDegree(neighbours);
    this.position = new int[nodes];
    for (int k = 0; k < nodes; k++) {
      position[order[k]] = k;
    }
    this.matrix = pattern(order, neighbours);
    this.slots = slots();
  }

  private int[][] neighbours() {
    int[] count = new int[nodes];
    for (int e = 0; e < from.length; e++) {
      if (from[e] != REFERENCE && to[e] != REFERENCE) {
        count[from[e]]++;
        count[to[e]]++;
      }
    }
    int[][] lists = new int[nodes][];
    for (int i = 0; i < nodes; i++) {
      lists[i] = new int[count[i]];
    }
    for (int e = 0; e < from.length; e++) {
      if (from[e] != REFERENCE && to[e] != REFERENCE) {
        lists[from[e]][--count[from[e]]] = to[e];
        lists[to[e]][--count[to[e]]] = from[e];
      }
    }
    for (int i = 0; i < nodes; i++) {
      lists[i] = sortedOnce(lists[i]);
    }
    return lists;
  }

  private static int[] sortedOnce(int[] list) {
    Arrays.sort(list);
    int kept = 0;
    for (int i = 0; i < list.length; i++) {
      if (i == 0 || list[i] != list[i - 1]) {
        list[kept++] = list[i];
      }
    }
    return Arrays.copyOf(list, kept);
  }

  private DMatrixSparseCSC pattern(int[] order, int[][] neighbours) {
    int entries = nodes;
    for (int[] list : neighbours) {
      entries += list.length;
    }
    DMatrixSparseCSC m = new DMatrixSparseCSC(nodes, nodes, entries);
    int at = 0;
    for (int col = 0; col < nodes; col++) {
      m.col_idx[col] = at;
      int start = at;
      m.nz_rows[at++] = col;
      for (int other : neighbours[order[col]]) {
        m.nz_rows[at++] = position[other];
      }
      Arrays.sort(m.nz_rows, start, at);
    }
    m.col_idx[nodes] = at;
    m.nz_length = at;
    m.indicesSorted = true;
    return m;
  }

  /** Where each edge's conductance is added (two places) and taken off (two places). */
  private int[] slots() {
    int[] found = new int[4 * from.length];
    Arrays.fill(found, -1);
    for (int e = 0; e < from.length; e++) {
      if (from[e] != REFERENCE) {
        found[4 * e] = slot(from[e], from[e]);
      }
      if (to[e] != REFERENCE) {
        found[4 * e + 1] = slot(to[e], to[e]);
      }
      if (from[e] != REFERENCE && to[e] != REFERENCE) {
        found[4 * e + 2] = slot(from[e], to[e]);
        found[4 * e + 3] = slot(to[e], from[e]);
      }
    }
    return found;
  }

  private int slot(int rowNode, int colNode) {
    int col = position[colNode];
    return Arrays.binarySearch(
        matrix.nz_rows, matrix.col_idx[col], matrix.col_idx[col + 1], position[rowNode]);
  }

  /**
   * Takes new conductances.
   *
   * @param edgeS conductance of each edge, S; may be negative for a linearised load
   * @return whether the matrix is positive definite; if not, there is nothing to solve with
   */
  boolean factor(double[] edgeS) {
    conductanceS = edgeS.clone();
    Arrays.fill(matrix.nz_values, 0, matrix.nz_length, 0);
    for (int e = 0; e < edgeS.length; e++) {
      add(slots[4 * e], edgeS[e]);
      add(slots[4 * e + 1], edgeS[e]);
      add(slots[4 * e + 2], -edgeS[e]);
      add(slots[4 * e + 3], -edgeS[e]);
    }
    return solver.setA(matrix);
  }

  private void add(int slot, double value) {
    if (slot >= 0) {
      matrix.nz_values[slot] += value;
    }
  }

  /**
   * Node voltages for given currents into the nodes.
   *
   * @param intoA current fed into each node from outside, A
   * @throws SumException if double precision does not suffice to satisfy the equations
   */
  double[] solve(double[] intoA) {
    double[] v = new double[nodes];
    double[] left = intoA.clone();
    double residual = 0;
    for (int round = 0; round <= REFINEMENTS; round++) {
      double[] step = solveOnce(left);
      for (int i = 0; i < nodes; i++) {
        v[i] += step[i];
      }
      left = residual(intoA, v);
      residual = largest(left);
      if (residual <= ROUNDING / 8 * largest(conductanceS) * largest(v)) {
        break;
      }
    }
    double allowed =
        RELATIVE_RESIDUAL * largest(intoA) + ROUNDING * largest(conductanceS) * largest(v);
    if (!(residual <= allowed)) {
      throw new SumException(
          String.format(
              Locale.ROOT,
              "the network cannot be solved accurately: %.3g A are left over at a node; its"
                  + " resistances lie too far apart",
              residual));
    }
    return v;
  }

  private double[] solveOnce(double[] intoA) {
    DMatrixRMaj b = new DMatrixRMaj(nodes, 1);
    for (int i = 0; i < nodes; i++) {
      b.data[position[i]] = intoA[i];
    }
    DMatrixRMaj x = new DMatrixRMaj(nodes, 1);
    solver.solve(b, x);
    double[] v = new double[nodes];
    for (int i = 0; i < nodes; i++) {
      v[i] = x.data[position[i]];
    }
    return v;
  }

  /** What is left over at each node, reckoned edge by edge and not with the matrix. */
  private double[] residual(double[] intoA, double[] v) {
    double[] left = intoA.clone();
    for (int e = 0; e < from.length; e++) {
      double current = conductanceS[e] * (at(v, from[e]) - at(v, to[e]));
      if (from[e] != REFERENCE) {
        left[from[e]] -= current;
      }
      if (to[e] != REFERENCE) {
        left[to[e]] += current;
      }
    }
    return left;
  }

  /** Voltage of a node by number. */
  static double at(double[] v, int node) {
    return node == REFERENCE ? 0 : v[node];
  }

  /** Largest magnitude; NaN if any value is NaN. */
  static double largest(double[] values) {
    double most = 0;
    for (double value : values) {
      most = Math.max(most, Math.abs(value));
    }
    return most;
  }
}
