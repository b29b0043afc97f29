package org.shopclime.airline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The machine against handbook and trade. */
class CompressorPublishedTest {

  private static final double PSIA = 14.7 * Ip.PSI;

  @ParameterizedTest
  @CsvFileSource(
      resources = "/published/airline/ideal-compression.csv",
      useHeadersInDisplayName = true)
  void idealCompression(String id, Stages stages, double dischargeF, double horsepower) {
    double ratio = 114.7 / 14.7;
    assertThat(Ip.fahrenheit(IdealCompression.dischargeCelsius(Ip.celsius(70), ratio, stages)))
        .as(id)
        .isCloseTo(dischargeF, within(3.0));
    double watts = IdealCompression.workPerVolume(PSIA, ratio, stages) * 100 * Ip.CFM;
    assertThat(watts / Ip.HORSEPOWER).as(id).isCloseTo(horsepower, withinPercentage(1));
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = "/published/airline/intake-temperature.csv",
      useHeadersInDisplayName = true)
  void hotAirIsLessAir(
      String id, double coolF, double hotF, double ratio, double perFiveF, double tolerance) {
    AirCompressor machine = AirCompressor.usual(5 * Ip.HORSEPOWER, Stages.TWO);
    double cool = machine.delivers(Ip.air(coolF, 0));
    double hot = machine.delivers(Ip.air(hotF, 0));
    assertThat(hot / cool).as(id).isCloseTo(ratio, within(tolerance));
    assertThat((1 - hot / cool) / ((hotF - coolF) / 5))
        .as(id)
        .isCloseTo(perFiveF, within(tolerance));
    double demand = cool / 2;
    assertThat(
            machine.running(demand, Ip.air(coolF, 0)).duty()
                / machine.running(demand, Ip.air(hotF, 0)).duty())
        .as("%s: running time grows as the air thins", id)
        .isCloseTo(ratio, within(tolerance));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/airline/most-ambient.csv", useHeadersInDisplayName = true)
  void mostAmbient(String id, String what, double low, double high, double tolerance) {
    double ours =
        what.equals("compressor") ? AirCompressor.MOST_AMBIENT : RefrigeratedDryer.MOST_AMBIENT;
    assertThat(Ip.fahrenheit(ours)).as(id + what).isBetween(low - tolerance, high + tolerance);
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = "/published/airline/air-per-horsepower.csv",
      useHeadersInDisplayName = true)
  void airPerHorsepower(
      String id, double horsepower, double low, double high, double lowCfm, double highCfm) {
    AirCompressor machine = AirCompressor.usual(horsepower * Ip.HORSEPOWER, Stages.TWO);
    double cfm = machine.freeAir() / Ip.CFM;
    assertThat(cfm / horsepower).as(id).isBetween(low, high);
    assertThat(cfm).as(id).isBetween(lowCfm, highCfm);
    assertThat(machine.tankPressure() / Ip.PSI).as(id).isBetween(100.0, 175.0);
  }
}
