package org.loomwright.benchmarks;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;

/** Time a thread spends on a processor: waiting for a core of a busy machine is not in it. */
public final class ProcessorTime {
  private ProcessorTime() {}

  /**
   * Average over some runs, ms.
   *
   * @param warmUp runs before, not counted
   * @param runs runs that count, at least one
   */
  public static double ms(int warmUp, int runs, Runnable work) {
    for (int i = 0; i < warmUp; i++) {
      work.run();
    }
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    long start = threads.getCurrentThreadCpuTime();
    for (int i = 0; i < runs; i++) {
      work.run();
    }
    return (threads.getCurrentThreadCpuTime() - start) / 1e6 / runs;
  }
}
