package org.shopclime.bench;

import java.util.Arrays;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.End;
import org.shopclime.heat.March;
import org.shopclime.heat.Network;

/** One step of a shop of 3 rooms and 30 chains of 8 nodes, in ns. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class MarchBenchmark {

  private Drivers drivers;
  private March march;
  private int count;

  /** Builds the shop. */
  @Setup
  public void build() {
    Network.Builder builder = Network.builder();
    for (int r = 0; r < 3; r++) {
      builder.room(2e5);
    }
    double[] capacities = new double[8];
    double[] conductances = new double[7];
    Arrays.fill(capacities, 1, 7, 1e5);
    Arrays.fill(conductances, 40);
    for (int k = 0; k < 30; k++) {
      End left =
          k % 5 == 4
              ? new End.Room((k + 1) % 3, 20, 50)
              : new End.Boundary(builder.boundary(), 200);
      builder.chain(left, capacities, conductances, new End.Room(k % 3, 20, 50));
    }
    Network network = builder.build();
    drivers = new Drivers(network);
    for (int b = 0; b < network.boundaries(); b++) {
      drivers.boundary(b, 30 + b);
    }
    drivers.inflow(0, 15, 35);
    drivers.exchange(0, 1, 10);
    drivers.exchange(1, 0, 10);
    drivers.hold(0, 25);
    march = new March(network, 900);
    march.start(25);
  }

  /**
   * A step with the flows of the step before.
   *
   * @return a temperature
   */
  @Benchmark
  public double sameFlows() {
    march.step(drivers);
    return march.air(1);
  }

  /**
   * A step whose flows differ from those of the step before.
   *
   * @return a temperature
   */
  @Benchmark
  public double otherFlows() {
    count++;
    drivers.inflow(0, 15 + (count & 7), 35);
    march.step(drivers);
    return march.air(1);
  }

  /**
   * A look ahead.
   *
   * @return a temperature
   */
  @Benchmark
  public double lookAhead() {
    return march.lookAhead(drivers, 1);
  }
}
