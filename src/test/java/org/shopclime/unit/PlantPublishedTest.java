package org.shopclime.unit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.shopclime.air.AirState;
import org.shopclime.air.MoistAir;
import org.shopclime.unit.SeasonalRating.Build;

class PlantPublishedTest {

  @ParameterizedTest
  @CsvFileSource(resources = "/published/unit/dust.csv", useHeadersInDisplayName = true)
  void dustLiesBetweenCleanAndDirtyCoils(
      String id, String end, String what, double lost, double expected, double tolerance) {
    DustBand band = new DustBand(lost);
    DustBand.End of = end.equals("kind") ? band.kind() : band.unkind();
    double actual =
        switch (what) {
          case "capacity" -> of.capacity();
          case "efficiency" -> of.efficiency();
          case "power per capacity" -> of.energy();
          default -> throw new IllegalArgumentException(what);
        };
    assertThat(actual).as("%s, dust.csv", id).isCloseTo(expected, within(tolerance));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/unit/heating-curves.csv", useHeadersInDisplayName = true)
  void heatPumpsFollowThePublishedSet(
      String id, String what, double outdoorF, double low, double high) {
    double room = celsius(70);
    double outdoor = celsius(outdoorF);
    double atRating = HeatingCurves.capacityRatio(room, celsius(47));
    double actual =
        switch (what) {
          case "capacity as printed" -> HeatingCurves.capacityRatio(room, outdoor);
          case "power per capacity as printed" ->
              HeatingCurves.powerPerCapacityRatio(room, outdoor);
          case "capacity" -> HeatingCurves.capacityRatio(room, outdoor) / atRating;
          case "efficiency" ->
              HeatingCurves.powerPerCapacityRatio(room, celsius(47))
                  / HeatingCurves.powerPerCapacityRatio(room, outdoor);
          default -> throw new IllegalArgumentException(what);
        };
    assertThat(actual).as("%s, heating-curves.csv", id).isBetween(low, high);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/unit/frost.csv", useHeadersInDisplayName = true)
  void frostCostsWhatTheStandardAllows(String id, String what, double outdoorF, double expected) {
    double actual =
        what.equals("capacity")
            ? Defrost.capacityFactor(celsius(outdoorF))
            : Defrost.powerFactor(celsius(outdoorF));
    assertThat(actual).as("%s, frost.csv", id).isCloseTo(expected, within(1e-12));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/unit/dehumidifier.csv", useHeadersInDisplayName = true)
  void dehumidifiersFollowThePublishedSet(
      String id, String what, double before, double after, double tolerance) {
    AirState mild = AirState.ofRelativeHumidity(celsius(65), 0.6, 101325);
    AirState warm = AirState.ofRelativeHumidity(celsius(80), 0.6, 101325);
    // a label of 1 in the state of the new test; the curves give their own 0.65 and 0.78 there
    Dehumidifier unit = Dehumidifier.ofLabel(20, 1.5);
    double water = -unit.at(warm, warm, 1).water() * 86400 / 20;
    double litres = water * 20 / (unit.at(warm, warm, 1).power() * 24 / 1000) / 1.5;
    double actual =
        switch (what) {
          case "water curve at 80 F and 60 %" -> water * 0.6497;
          case "litres for each kWh at 80 F and 60 %" -> litres * 0.7778;
          case "old to new" -> 1 / water;
          default -> throw new IllegalArgumentException(what);
        };
    assertThat(actual).as("%s, dehumidifier.csv", id).isCloseTo(after / before, within(tolerance));
    assertThat(-unit.at(mild, mild, 1).water() * 86400).isCloseTo(20, within(1e-9));
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = "/published/unit/adjusted-capacity.csv",
      useHeadersInDisplayName = true)
  void portableUnitsLoseWhatLabelsTell(String id, String what, double low, double high) {
    double actual =
        switch (what) {
          case "indoors" -> humidityRatio(80, 67);
          case "hot" -> humidityRatio(95, 75);
          case "mild" -> humidityRatio(83, 67.5);
          case "adjusted by older" -> {
            PortableUnit unit = PortableUnit.oneHose(Rating.ofEer(3516.85, 9));
            AirState older = AirState.ofWetBulb(celsius(95), celsius(75), 101325);
            yield AdjustedCapacity.of(unit)
                / -unit.withHeatBack(0).at(older, older, 1).heatToRoom(older.dryBulb());
          }
          default -> throw new IllegalArgumentException(what);
        };
    assertThat(actual).as("%s, adjusted-capacity.csv", id).isBetween(low, high);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/unit/seasonal-ratings.csv", useHeadersInDisplayName = true)
  void labelsTurnIntoEachOther(
      String id, String what, double given, double expected, double tolerance) {
    double actual =
        switch (what) {
          case "SEER2 of SEER ducted" -> Build.DUCTED_SPLIT.cooling2(given);
          case "SEER2 of SEER packaged" -> Build.PACKAGED.cooling2(given);
          case "SEER2 of SEER ductless" -> Build.DUCTLESS.cooling2(given);
          case "HSPF2 of HSPF ducted" -> Build.DUCTED_SPLIT.hspf2(given);
          case "HSPF2 of HSPF packaged" -> Build.PACKAGED.hspf2(given);
          case "HSPF2 of HSPF ductless" -> Build.DUCTLESS.hspf2(given);
          case "EER of SEER" -> SeasonalRating.singleSpeedEer(given);
          case "COP at 47 of HSPF" -> SeasonalRating.singleSpeedCopAt47(given);
          case "COP of EER" -> SeasonalRating.cop(given);
          default -> throw new IllegalArgumentException(what);
        };
    assertThat(actual).as("%s, seasonal-ratings.csv", id).isCloseTo(expected, within(tolerance));
  }

  private static double humidityRatio(double dryBulbF, double wetBulbF) {
    return MoistAir.humidityRatioFromWetBulb(celsius(dryBulbF), celsius(wetBulbF), 101325);
  }

  private static double celsius(double fahrenheit) {
    return (fahrenheit - 32) / 1.8;
  }
}
