package org.shopclime.bench;

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
import org.shopclime.air.MoistAir;

/**
 * Properties of moist air, ours and by a root finder on the printed equations, each over the same
 * spread of states; ns for one state.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@OperationsPerInvocation(AirSpread.SIZE)
public class MoistAirBenchmark {

  /** The states. */
  @State(Scope.Thread)
  public static class Spread {

    private final AirSpread air = new AirSpread(1);
  }

  /** The root finder compared with. */
  @State(Scope.Thread)
  public static class Plain {

    /** Which one. */
    @Param({"BRENT", "NTH_ORDER_BRENT"})
    public String finder;

    private PlainMoistAir plain;

    /** Makes the solver. */
    @Setup
    public void make() {
      plain = new PlainMoistAir(PlainMoistAir.Finder.valueOf(finder));
    }
  }

  /**
   * Saturation pressure, ours.
   *
   * @param spread states
   * @return sum over all
   */
  @Benchmark
  public double saturationPressureOurs(Spread spread) {
    AirSpread a = spread.air;
    double sum = 0;
    for (int i = 0; i < AirSpread.SIZE; i++) {
      sum += MoistAir.saturationPressure(a.dryBulb[i]);
    }
    return sum;
  }

  /**
   * Saturation pressure, as printed.
   *
   * @param spread states
   * @return sum over all
   */
  @Benchmark
  public double saturationPressurePlain(Spread spread) {
    AirSpread a = spread.air;
    double sum = 0;
    for (int i = 0; i < AirSpread.SIZE; i++) {
      sum += PlainMoistAir.saturationPressure(a.dryBulb[i]);
    }
    return sum;
  }

  /**
   * Wet bulb, ours.
   *
   * @param spread states
   * @return sum over all
   */
  @Benchmark
  public double wetBulbOurs(Spread spread) {
    AirSpread a = spread.air;
    double sum = 0;
    for (int i = 0; i < AirSpread.SIZE; i++) {
      sum += MoistAir.wetBulb(a.dryBulb[i], a.humidityRatio[i], a.pressure[i]);
    }
    return sum;
  }

  /**
   * Wet bulb, by the root finder.
   *
   * @param spread states
   * @param plain root finder
   * @return sum over all
   */
  @Benchmark
  public double wetBulbPlain(Spread spread, Plain plain) {
    AirSpread a = spread.air;
    PlainMoistAir p = plain.plain;
    double sum = 0;
    for (int i = 0; i < AirSpread.SIZE; i++) {
      sum += p.wetBulb(a.dryBulb[i], a.humidityRatio[i], a.pressure[i]);
    }
    return sum;
  }

  /**
   * Dew point, ours.
   *
   * @param spread states
   * @return sum over all
   */
  @Benchmark
  public double dewPointOurs(Spread spread) {
    AirSpread a = spread.air;
    double sum = 0;
    for (int i = 0; i < AirSpread.SIZE; i++) {
      sum += MoistAir.dewPoint(a.humidityRatio[i], a.pressure[i]);
    }
    return sum;
  }

  /**
   * Dew point, by the root finder.
   *
   * @param spread states
   * @param plain root finder
   * @return sum over all
   */
  @Benchmark
  public double dewPointPlain(Spread spread, Plain plain) {
    AirSpread a = spread.air;
    PlainMoistAir p = plain.plain;
    double sum = 0;
    for (int i = 0; i < AirSpread.SIZE; i++) {
      sum += p.dewPoint(a.humidityRatio[i], a.pressure[i]);
    }
    return sum;
  }

  /**
   * Saturated air of an enthalpy, ours.
   *
   * @param spread states
   * @return sum over all
   */
  @Benchmark
  public double saturatedTemperatureOurs(Spread spread) {
    AirSpread a = spread.air;
    double sum = 0;
    for (int i = 0; i < AirSpread.SIZE; i++) {
      sum += MoistAir.saturatedTemperature(a.enthalpy[i], a.pressure[i]);
    }
    return sum;
  }

  /**
   * Saturated air of an enthalpy, by the root finder.
   *
   * @param spread states
   * @param plain root finder
   * @return sum over all
   */
  @Benchmark
  public double saturatedTemperaturePlain(Spread spread, Plain plain) {
    AirSpread a = spread.air;
    PlainMoistAir p = plain.plain;
    double sum = 0;
    for (int i = 0; i < AirSpread.SIZE; i++) {
      sum += p.saturatedTemperature(a.enthalpy[i], a.pressure[i], a.dryBulb[i] + 1);
    }
    return sum;
  }

  /**
   * Dry bulb of an enthalpy, ours.
   *
   * @param spread states
   * @return sum over all
   */
  @Benchmark
  public double dryBulbOurs(Spread spread) {
    AirSpread a = spread.air;
    double sum = 0;
    for (int i = 0; i < AirSpread.SIZE; i++) {
      sum += MoistAir.dryBulbFromEnthalpy(a.enthalpy[i], a.humidityRatio[i]);
    }
    return sum;
  }

  /**
   * Dry bulb of an enthalpy, by the root finder.
   *
   * @param spread states
   * @param plain root finder
   * @return sum over all
   */
  @Benchmark
  public double dryBulbPlain(Spread spread, Plain plain) {
    AirSpread a = spread.air;
    PlainMoistAir p = plain.plain;
    double sum = 0;
    for (int i = 0; i < AirSpread.SIZE; i++) {
      sum += p.dryBulb(a.enthalpy[i], a.humidityRatio[i]);
    }
    return sum;
  }

  /**
   * Humidity ratio of a wet bulb, ours.
   *
   * @param spread states
   * @return sum over all
   */
  @Benchmark
  public double humidityRatioOurs(Spread spread) {
    AirSpread a = spread.air;
    double sum = 0;
    for (int i = 0; i < AirSpread.SIZE; i++) {
      sum += MoistAir.humidityRatioFromWetBulb(a.dryBulb[i], a.wetBulb[i], a.pressure[i]);
    }
    return sum;
  }

  /**
   * Humidity ratio of a wet bulb, by the root finder.
   *
   * @param spread states
   * @param plain root finder
   * @return sum over all
   */
  @Benchmark
  public double humidityRatioPlain(Spread spread, Plain plain) {
    AirSpread a = spread.air;
    PlainMoistAir p = plain.plain;
    double sum = 0;
    for (int i = 0; i < AirSpread.SIZE; i++) {
      sum += p.humidityRatio(a.dryBulb[i], a.wetBulb[i], a.pressure[i]);
    }
    return sum;
  }
}
