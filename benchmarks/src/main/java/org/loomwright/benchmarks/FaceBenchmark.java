package org.loomwright.benchmarks;

import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.loomwright.drawing.CavityMark;
import org.loomwright.drawing.Face;
import org.loomwright.drawing.FaceWords;
import org.loomwright.drawing.Lettering;
import org.loomwright.model.parts.Housing;
import org.loomwright.model.vehicle.LatchDirection;
import org.loomwright.model.vehicle.Side;
import org.loomwright.model.vehicle.View;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** A face of forty cavities: its picture, and words for all of them, beside {@link PlainWords}. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class FaceBenchmark {
  static final View WIRE_UP = new View(Side.WIRE_SIDE, LatchDirection.UP);

  private final Housing housing = FortyWay.housing();

  /** Shortest words for every cavity. */
  @Benchmark
  public Map<String, String> words() {
    return FaceWords.positions(housing, WIRE_UP);
  }

  /** The plain reference. */
  @Benchmark
  public Map<String, String> plainWords() {
    return PlainWords.of(housing);
  }

  /** The picture with some marks. */
  @Benchmark
  public String picture() {
    return Face.svg(
        housing,
        WIRE_UP,
        Map.of("7", CavityMark.SOUGHT, "12", CavityMark.FILLED, "30", CavityMark.PLUGGED),
        164,
        80,
        Lettering.text());
  }
}
