package org.shopclime.bench;

import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.infra.Blackhole;
import org.shopclime.air.AirState;
import org.shopclime.unit.RoomUnit;

/** What a window unit does to the air of a room, over a spread of rooms and days; ns for one. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@OperationsPerInvocation(UnitBenchmark.SIZE)
public class UnitBenchmark {

  static final int SIZE = 256;

  /** Relative humidity of the rooms: damp ones wet the coil, dry ones do not. */
  @Param({"damp", "dry"})
  public String rooms;

  private final RoomUnit unit = RoomUnit.windowUnitByCeer(3516.85, 3.19);
  private final AirState[] air = new AirState[SIZE];
  private final double[] outdoor = new double[SIZE];

  /** Makes rooms of 20 to 32 °C on days of 24 to 42 °C. */
  @Setup
  public void make() {
    Random random = new Random(1);
    double least = rooms.equals("damp") ? 0.45 : 0.05;
    for (int i = 0; i < SIZE; i++) {
      outdoor[i] = 24 + 18 * random.nextDouble();
      air[i] =
          AirState.ofRelativeHumidity(
              20 + 12 * random.nextDouble(),
              least + 0.3 * random.nextDouble(),
              83_000 + 19_000 * random.nextDouble());
    }
  }

  /**
   * The unit, running flat out.
   *
   * @param sink takes each answer
   */
  @Benchmark
  public void at(Blackhole sink) {
    for (int i = 0; i < SIZE; i++) {
      sink.consume(unit.at(outdoor[i], air[i]));
    }
  }
}
