package org.shopclime.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * One day of a shop of 2 rooms and 25 chains, ours, by a dense matrix and by the general
 * integrators; µs.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class SolverBenchmark {

  /** One of {@link BenchDay.Way}. */
  @Param({
    "MODES_1",
    "MODES_4",
    "MARCH_4",
    "MARCH_12",
    "DENSE_4",
    "DENSE_12",
    "DORMAND_PRINCE_853",
    "DORMAND_PRINCE_54",
    "HIGHAM_HALL_54",
    "GRAGG_BULIRSCH_STOER",
    "ADAMS_MOULTON"
  })
  public String way;

  private BenchDay day;
  private BenchDay.Solver solver;

  /** Lays the network out and factors it, which is not timed. */
  @Setup
  public void make() {
    day = new BenchDay();
    solver = BenchDay.Way.valueOf(way).solver(day);
  }

  /**
   * The 24 hours.
   *
   * @return mean air of each hour
   */
  @Benchmark
  public double[][] day() {
    return day.means(solver);
  }
}
