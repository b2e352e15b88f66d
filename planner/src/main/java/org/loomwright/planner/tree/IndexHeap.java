package org.loomwright.planner.tree;

/** Nodes that wait, least label first; among equal labels the lower number. */
final class IndexHeap {
  private final double[] label;
  private final int[] heap;
  private final int[] place;
  private int size;

  /** An empty heap. The labels are read from the array whenever needed and may only fall. */
  IndexHeap(double[] label) {
    this.label = label;
    heap = new int[label.length];
    place = new int[label.length];
  }

  boolean isEmpty() {
    return size == 0;
  }

  /** Lets a node wait, or moves it forward after its label fell. */
  void put(int node) {
    int at = place[node];
    if (at >= size || heap[at] != node) {
      at = size++;
    }
    while (at > 0 && before(node, heap[(at - 1) / 2])) {
      set(at, heap[(at - 1) / 2]);
      at = (at - 1) / 2;
    }
    set(at, node);
  }

  /** Takes the first node out. */
  int take() {
    int first = heap[0];
    int last = heap[--size];
    int at = 0;
    while (2 * at + 1 < size) {
      int child = 2 * at + 1;
      if (child + 1 < size && before(heap[child + 1], heap[child])) {
        child++;
      }
      if (!before(heap[child], last)) {
        break;
      }
      set(at, heap[child]);
      at = child;
    }
    set(at, last);
    return first;
  }

  private void set(int at, int node) {
    heap[at] = node;
    place[node] = at;
  }

  private boolean before(int a, int b) {
    return label[a] < label[b] || (label[a] == label[b] && a < b);
  }
}
