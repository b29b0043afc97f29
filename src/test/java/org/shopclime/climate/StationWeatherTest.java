package org.shopclime.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The committed table and the clear-sky model against hourly files (TMY3, NREL/TP-581-43156). */
class StationWeatherTest {
  private static final String WHERE = System.getProperty("shopclime.weather", "");

  /** Stations of the table that tell their own depth, but for Austin. */
  private static final List<String> TELLING =
      List.of("725650", "725500", "722050", "744860", "743945", "724297", "724050");

  @BeforeEach
  void needsHourlyFiles() {
    Assumptions.assumeFalse(WHERE.isEmpty(), "no hourly files: set shopclime.weather");
  }

  private static WeatherYear hourly(String id) {
    return year(Path.of(WHERE, "hourly", id + ".csv.xz"));
  }

  private static WeatherYear year(Path file) {
    WeatherReading reading = WeatherFile.read(file);
    assertThat(reading).isInstanceOf(WeatherReading.Good.class);
    return ((WeatherReading.Good) reading).year();
  }

  @ParameterizedTest
  @ValueSource(strings = {"725650", "722050", "744860"})
  void ownRowsAreFoundAgain(String id) {
    WeatherYear year = hourly(id);
    StationClimate again = StationStatistics.of(year, AerosolFill.own(year).orElseThrow());
    assertThat(StationTable.cells(again)).isEqualTo(committed(id));
  }

  /** One of them with days that were filled. */
  @ParameterizedTest
  @ValueSource(strings = {"725650", "722780", "722039"})
  void ownTypicalYearIsFoundAgain(String id) {
    TypicalYear again = DayTypes.of(hourly(id));
    Climates climates = Climates.load();
    TypicalYear committed = climates.typicalYear(again.station()).orElseThrow();
    assertThat(TypicalYearTable.types(committed).toList())
        .isEqualTo(TypicalYearTable.types(again).toList());
    assertThat(TypicalYearTable.shapes(committed).toList())
        .isEqualTo(TypicalYearTable.shapes(again).toList());
    assertThat(committed.sequence()).isEqualTo(again.sequence());
  }

  /** Nineteen days of its July read 46 to 65 °C at the coast of Alaska: they are in °F. */
  @Test
  void aSpellInFahrenheitIsPutRightAndTold() {
    WeatherReading reading = WeatherFile.read(Path.of(WHERE, "hourly", "703884.csv.xz"));
    assertThat(reading)
        .isInstanceOfSatisfying(
            WeatherReading.Good.class,
            good -> {
              assertThat(good.notes())
                  .anyMatch(note -> note.contains("433 hours far too hot") && note.contains("°F"));
              assertThat(StationStatistics.monthly(good.year(), good.year()::dryBulb).at(7))
                  .isBetween(11.0, 15.0);
            });
  }

  @Test
  void theRowWithALentDepthIsFoundAgain() {
    WeatherYear downtown = hourly("722235");
    Map<Station, Months> telling =
        Map.of(downtown.station(), AerosolFill.own(downtown).orElseThrow().depth());
    WeatherYear regional = hourly("722230");
    assertThat(AerosolFill.own(regional)).isEmpty();
    StationClimate again = StationStatistics.of(regional, AerosolFill.of(regional, telling));
    assertThat(StationTable.cells(again)).isEqualTo(committed("722230"));
  }

  private static Map<String, String> committed(String id) {
    return StationTable.cells(Climates.load().find(id).orElseThrow());
  }

  @ParameterizedTest
  @ValueSource(strings = {"725650", "722780", "722230", "722190"})
  void bothFormsOfAFileAreOneYear(String id) {
    WeatherYear full = year(Path.of(WHERE, "full", id + "TYA.CSV.xz"));
    WeatherYear slim = hourly(id);
    assertThat(full.station()).isEqualTo(slim.station());
    for (int hour = 1; hour <= WeatherYear.COUNT; hour++) {
      assertThat(full.dryBulb(hour)).isEqualTo(slim.dryBulb(hour));
      assertThat(full.directNormal(hour)).isEqualTo(slim.directNormal(hour));
      assertThat(full.dewPoint(hour)).isEqualTo(slim.dewPoint(hour));
    }
  }

  /**
   * The model's beam at the stations' own July depth against the recorded one. In hours near noon
   * with least cloud the brightest are clear, so the clearest fifth is compared. Bands: each
   * station within 16 %, the uncertainty that the full files give their beam on clear July noons (6
   * to 16 %); the mean of the stations within the few per cent that the model's report tells
   * (SERI/TR-642-761).
   */
  @Test
  void theModelGivesTheRecordedBeamOnClearNoons() {
    double sum = 0;
    for (String id : TELLING) {
      WeatherYear year = hourly(id);
      double depth = AerosolFill.own(year).orElseThrow().depth().at(7);
      double[] ratios =
          AerosolFill.clearest(year, 7).stream()
              .mapToDouble(hour -> hour.modelled(depth) / hour.recorded())
              .sorted()
              .toArray();
      double clear = ratios[ratios.length / 5];
      assertThat(clear).as(id).isCloseTo(1, within(0.16));
      sum += clear;
    }
    assertThat(sum / TELLING.size()).isCloseTo(1, within(0.04));
  }

  /**
   * Turning the model round, against the depth the stations tell: the July noon beam of both. Bands
   * as for the beam itself.
   */
  @Test
  void turningTheModelRoundGivesNearlyTheToldDepth() {
    double sum = 0;
    for (String id : TELLING) {
      WeatherYear year = hourly(id);
      AerosolFill.NoonHour noon = AerosolFill.clearest(year, 7).get(0);
      double told = noon.modelled(AerosolFill.own(year).orElseThrow().depth().at(7));
      double found = noon.modelled(AerosolFill.inverted(year).depth().at(7));
      assertThat(found / told).as(id).isCloseTo(1, within(0.16));
      sum += found / told;
    }
    assertThat(sum / TELLING.size()).isCloseTo(1, within(0.04));
  }
}
