package org.shopclime.airline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.shopclime.air.AirState;
import org.shopclime.air.MoistAir;

/** Water in the line against handbook, trade tables and pencil. */
class LineWaterPublishedTest {

  private static double gallons(double gramsPerHour) {
    return gramsPerHour / 1000 / Ip.GALLON_OF_WATER;
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/airline/water-carried.csv", useHeadersInDisplayName = true)
  void waterCarried(
      String id,
      double intakeF,
      double percent,
      double lineF,
      double psig,
      double drawn,
      double left,
      double condensed,
      double tolerance) {
    AirState intake = Ip.air(intakeF, percent);
    double dryAir = 1000 * Ip.CUBIC_FOOT * intake.dryAirDensity() / 3600;
    LineResult hour = Ip.coldLine(intake, dryAir, psig, lineF);
    assertThat(gallons(hour.waterDrawn()))
        .as(id)
        .isCloseTo(drawn, withinPercentage(100 * tolerance));
    double standard = 1000 * Ip.CUBIC_FOOT * ToolUse.STANDARD_DENSITY / 3600;
    assertThat(gallons(Ip.coldLine(intake, standard, psig, lineF).toolVapour()))
        .as(id)
        .isCloseTo(left, withinPercentage(100 * tolerance));
    assertThat(gallons(hour.lineWater()))
        .as(id)
        .isCloseTo(condensed, withinPercentage(100 * tolerance));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/airline/water-chain.csv", useHeadersInDisplayName = true)
  void coolerAndDryer(
      String id,
      double scfm,
      double intakeF,
      double percent,
      double coolerF,
      double psig,
      double dryerF,
      double drawn,
      double cooler,
      double left,
      double dryer,
      double tolerance) {
    double ambient = Ip.celsius(coolerF) - Aftercooler.USUAL_APPROACH;
    AirLine line =
        new AirLine(
            Ip.machine(psig),
            List.of(
                new Aftercooler(Aftercooler.USUAL_APPROACH, LineSite.PLACE),
                new RefrigeratedDryer(
                    1.05 * scfm * Ip.CFM, Ip.celsius(dryerF), 0, LineSite.PLACE)));
    LineResult hour =
        line.run(
            Ip.air(intakeF, percent),
            Ip.demand(scfm * Ip.CFM * ToolUse.STANDARD_DENSITY),
            new LineSurroundings(ambient, ambient, ambient));
    double day = 24 / 1000.0 / Ip.GALLON_OF_WATER;
    assertThat(hour.waterDrawn() * day).as(id).isCloseTo(drawn, withinPercentage(100 * tolerance));
    assertThat(hour.tankWater() * day).as(id).isCloseTo(cooler, withinPercentage(100 * tolerance));
    assertThat((hour.waterDrawn() - hour.tankWater()) * day)
        .as(id)
        .isCloseTo(left, withinPercentage(100 * tolerance));
    assertThat(hour.dryerWater() * day).as(id).isCloseTo(dryer, withinPercentage(100 * tolerance));
    assertThat(hour.pressureDewPoint()).as(id).isCloseTo(Ip.celsius(dryerF), within(1e-6));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/airline/water-table.csv", useHeadersInDisplayName = true)
  void waterOfEachCfm(
      String id, double intakeF, double percent, double galPerHour, double tolerance) {
    AirState intake = Ip.air(intakeF, percent);
    LineResult hour = Ip.coldLine(intake, Ip.CFM * intake.dryAirDensity(), 100, 35);
    assertThat(gallons(hour.waterDrawn()))
        .as(id)
        .isCloseTo(galPerHour, withinPercentage(100 * tolerance));
    assertThat(gallons(hour.waterDrawn() - hour.lineWater()))
        .as("%s: left as vapour", id)
        .isBetween(0.0002, 0.0003);
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = "/published/airline/vapour-content.csv",
      useHeadersInDisplayName = true)
  void vapourContent(String id, double fahrenheit, double grains, double tolerance) {
    assertThat(perCubicFoot(fahrenheit))
        .as(id)
        .isCloseTo(grains, withinPercentage(100 * tolerance));
  }

  private static double perCubicFoot(double fahrenheit) {
    AirState air = Ip.air(fahrenheit, 100);
    return air.humidityRatio() * air.dryAirDensity() * Ip.CUBIC_FOOT / Ip.POUND * 7000;
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/airline/condensate.csv", useHeadersInDisplayName = true)
  void condensate(
      String id,
      double lbPerMinute,
      double intakeF,
      double percent,
      double lineF,
      double psig,
      double lbPerHour,
      double galPerHour,
      double tolerance) {
    LineResult hour =
        Ip.coldLine(Ip.air(intakeF, percent), lbPerMinute * Ip.POUND / 60, psig, lineF);
    assertThat(hour.lineWater() / 1000 / Ip.POUND)
        .as(id)
        .isCloseTo(lbPerHour, withinPercentage(100 * tolerance));
    assertThat(gallons(hour.lineWater()))
        .as(id)
        .isCloseTo(galPerHour, withinPercentage(100 * tolerance));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/airline/dew-points.csv", useHeadersInDisplayName = true)
  void dewPointAfterAChangeOfPressure(
      String id,
      double fahrenheit,
      double percent,
      double fromPsig,
      double toPsig,
      double low,
      double high,
      double tolerance) {
    double from = MoistAir.STANDARD_PRESSURE + fromPsig * Ip.PSI;
    double to = MoistAir.STANDARD_PRESSURE + toPsig * Ip.PSI;
    double celsius = Ip.celsius(fahrenheit);
    LineAir air = new LineAir(celsius, from, percent / 100 * LineAir.capacity(celsius, from));
    if (percent < 100) {
      air = new LineAir(celsius, from, Ip.air(fahrenheit, percent).humidityRatio());
    }
    LineAir after = to < from ? air.letDownTo(to) : new LineAir(celsius, to, air.humidityRatio());
    assertThat(Ip.fahrenheit(after.pressureDewPoint()))
        .as(id)
        .isBetween(low - tolerance, high + tolerance);
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = "/published/airline/moisture-doubling.csv",
      useHeadersInDisplayName = true)
  void doublesEveryTwentyDegrees(
      String id, double coldF, double warmF, double ratio, double tolerance) {
    assertThat(perCubicFoot(warmF) / perCubicFoot(coldF))
        .as(id)
        .isCloseTo(ratio, withinPercentage(100 * tolerance));
  }

  /** 600 ft3 at 90 °F and 70 %: 18.99 kg of dry air x (0.0214 - 0.0052) = 308 g = 10.4 fl oz. */
  @ParameterizedTest
  @CsvFileSource(
      resources = "/published/airline/air-water-pencil.csv",
      useHeadersInDisplayName = true)
  void ouncesByThePencil(
      String id, double intakeF, double percent, double ounces, double tolerance) {
    AirState intake = Ip.air(intakeF, percent);
    LineResult hour = Ip.coldLine(intake, 10 * Ip.CFM * intake.dryAirDensity(), 100, 100);
    assertThat(hour.lineWater() / 29.5735).as(id).isCloseTo(ounces, within(tolerance));
  }
}
