package org.shopclime.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.aggregator.ArgumentsAccessor;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Moist air against handbook tables, worked examples and an independent program. */
class MoistAirPublishedTest {

  private static final double SEA_LEVEL = 101_325;

  /** m³/kg in a ft³/lb, and J/kg in a BTU/lb, by the definitions of the units. */
  private static final double SI_VOLUME = 0.3048 * 0.3048 * 0.3048 / 0.45359237;

  private static final double SI_ENTHALPY = 2326;

  private static double celsius(double fahrenheit) {
    return (fahrenheit - 32) / 1.8;
  }

  /** Fahrenheit tables count dry air from 0 °F, water from 32 °F. */
  private static double enthalpyIp(double enthalpy) {
    return (enthalpy - MoistAir.enthalpy(celsius(0), 0)) / SI_ENTHALPY;
  }

  private static AirState state(ArgumentsAccessor row) {
    double dryBulb = row.getDouble(3);
    double given = row.getDouble(5);
    double pressure = row.getDouble(2);
    return switch (row.getString(4)) {
      case "rh" -> AirState.ofRelativeHumidity(dryBulb, given, pressure);
      case "twb" -> AirState.ofWetBulb(dryBulb, given, pressure);
      case "tdp" -> AirState.ofDewPoint(dryBulb, given, pressure);
      default -> throw new IllegalArgumentException(row.getString(4));
    };
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/air/moist-air.csv", useHeadersInDisplayName = true)
  void agreesWithAnIndependentProgram(ArgumentsAccessor row) {
    String id = row.getString(0);
    AirState air = state(row);
    double dryBulb = air.dryBulb();
    double pressure = air.pressure();
    double ratio = air.humidityRatio();
    double wetBulb = row.getDouble(10);
    double dewPoint = row.getDouble(11);
    assertThat(MoistAir.standardPressure(row.getDouble(1)))
        .as("%s standard pressure", id)
        .isCloseTo(pressure, withinPercentage(0.05));
    assertThat(air.relativeHumidity()).as("%s rh", id).isCloseTo(row.getDouble(6), offset(2e-3));
    assertThat(MoistAir.saturationPressure(dryBulb))
        .as("%s psat", id)
        .isCloseTo(row.getDouble(7), withinPercentage(0.1));
    assertThat(air.vapourPressure())
        .as("%s pv", id)
        .isCloseTo(row.getDouble(8), withinPercentage(0.3));
    assertThat(ratio)
        .as("%s W", id)
        .isCloseTo(row.getDouble(9), offset(Math.max(2e-6, 0.002 * row.getDouble(9))));
    assertThat(air.wetBulb())
        .as("%s wet bulb", id)
        .isCloseTo(wetBulb, offset(wetBulb < 0 ? 0.1 : 0.05));
    assertThat(air.dewPoint())
        .as("%s dew point", id)
        .isCloseTo(dewPoint, offset(dewPoint < 0 ? 0.1 : 0.05));
    assertThat(air.enthalpy() / 1000).as("%s h", id).isCloseTo(row.getDouble(12), offset(0.1));
    assertThat(air.specificVolume())
        .as("%s v", id)
        .isCloseTo(row.getDouble(13), withinPercentage(0.1));
    assertThat(dryBulb).as("%s °F", id).isCloseTo(celsius(row.getDouble(14)), offset(0.003));
    assertThat(air.wetBulb())
        .as("%s wet bulb °F", id)
        .isCloseTo(celsius(row.getDouble(15)), offset(wetBulb < 0 ? 0.1 : 0.05));
    assertThat(air.dewPoint())
        .as("%s dew point °F", id)
        .isCloseTo(celsius(row.getDouble(16)), offset(dewPoint < 0 ? 0.1 : 0.05));
    assertThat(enthalpyIp(air.enthalpy()))
        .as("%s h in BTU/lb", id)
        .isCloseTo(row.getDouble(17), offset(0.05));
    assertThat(air.specificVolume() / SI_VOLUME)
        .as("%s v in ft³/lb", id)
        .isCloseTo(row.getDouble(18), withinPercentage(0.1));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/air/states.csv", useHeadersInDisplayName = true)
  void agreesWithChartAndRatingStates(ArgumentsAccessor row) {
    String id = row.getString(0);
    double dryBulb = celsius(row.getDouble(1));
    AirState air =
        row.get(2) == null
            ? AirState.ofRelativeHumidity(dryBulb, row.getDouble(3), SEA_LEVEL)
            : AirState.ofWetBulb(dryBulb, celsius(row.getDouble(2)), SEA_LEVEL);
    assertThat(air.dewPoint() * 1.8 + 32)
        .as("%s dew point", id)
        .isCloseTo(row.getDouble(6), offset(row.getDouble(11)));
    if (row.get(2) != null) {
      assertThat(air.relativeHumidity())
          .as("%s relative humidity", id)
          .isCloseTo(row.getDouble(3), offset(row.getDouble(8)));
      assertThat(air.humidityRatio())
          .as("%s humidity ratio", id)
          .isCloseTo(row.getDouble(4), withinPercentage(100 * row.getDouble(9)));
      assertThat(enthalpyIp(air.enthalpy()))
          .as("%s enthalpy", id)
          .isCloseTo(row.getDouble(5), offset(row.getDouble(10)));
    }
    if (row.get(7) != null) {
      assertThat(air.specificVolume() / SI_VOLUME)
          .as("%s volume", id)
          .isCloseTo(row.getDouble(7), offset(row.getDouble(12)));
    }
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/air/saturated-air.csv", useHeadersInDisplayName = true)
  void agreesWithTheTableOfSaturatedAir(
      String id,
      Double fahrenheit,
      Double celsius,
      double humidityRatio,
      double enthalpy,
      Double volume) {
    double dryBulb = fahrenheit == null ? celsius : celsius(fahrenheit);
    double ratio = MoistAir.saturationHumidityRatio(dryBulb, SEA_LEVEL);
    assertThat(ratio).as("%s W", id).isCloseTo(humidityRatio, withinPercentage(0.8));
    double h = MoistAir.enthalpy(dryBulb, ratio);
    if (fahrenheit == null) {
      assertThat(h / 1000)
          .as("%s h", id)
          .isCloseTo(enthalpy, offset(Math.max(0.05, 0.006 * enthalpy)));
    } else {
      assertThat(enthalpyIp(h)).as("%s h", id).isCloseTo(enthalpy, withinPercentage(0.5));
      assertThat(MoistAir.specificVolume(dryBulb, ratio, SEA_LEVEL) / SI_VOLUME)
          .as("%s v", id)
          .isCloseTo(volume, withinPercentage(0.2));
    }
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/air/standard-pressure.csv", useHeadersInDisplayName = true)
  void agreesWithTheStandardAtmosphere(String id, double feet, double psia) {
    assertThat(MoistAir.standardPressure(feet * 0.3048))
        .as(id)
        .isCloseTo(psia * 6894.757, withinPercentage(0.1));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/air/cooling-coil.csv", useHeadersInDisplayName = true)
  void coolsAsInTheWorkedExample(
      String id,
      double cfm,
      double dryBulbF,
      double relativeHumidity,
      double leavingF,
      double condensate,
      double btuh) {
    AirState in = AirState.ofRelativeHumidity(celsius(dryBulbF), relativeHumidity, SEA_LEVEL);
    AirState out = AirState.ofRelativeHumidity(celsius(leavingF), 1, SEA_LEVEL);
    double dryAir = cfm * 0.3048 * 0.3048 * 0.3048 / 60 * in.dryAirDensity();
    double heat =
        in.enthalpy()
            - out.enthalpy()
            - (in.humidityRatio() - out.humidityRatio()) * condensate * SI_ENTHALPY;
    assertThat(dryAir * heat * 3600 / (SI_ENTHALPY * 0.45359237))
        .as(id)
        .isCloseTo(btuh, withinPercentage(0.7));
  }

  @Test
  void everyCheckOfTheCollectionIsHere() throws IOException {
    TreeSet<String> ids = new TreeSet<>();
    for (String file :
        List.of(
            "saturation-pressure",
            "saturated-air",
            "standard-pressure",
            "states",
            "cooling-coil",
            "moist-air")) {
      try (InputStream in = getClass().getResourceAsStream("/published/air/" + file + ".csv")) {
        new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8)
            .lines()
            .filter(line -> line.matches("[A-Z]+-\\d\\d,.*"))
            .map(line -> line.substring(0, line.indexOf(',')))
            .forEach(ids::add);
      }
    }
    TreeSet<String> expected =
        Stream.of(1, 2, 3, 4, 6, 7, 9, 12, 14, 16, 18, 19, 20, 21)
            .map(number -> String.format("A-%02d", number))
            .collect(Collectors.toCollection(TreeSet::new));
    // The collection leaves out every third state from the second on.
    for (int number = 1; number <= 67; number++) {
      if (number % 3 != 2) {
        expected.add(String.format("MA-%02d", number));
      }
    }
    assertThat(ids).isEqualTo(expected);
  }
}
