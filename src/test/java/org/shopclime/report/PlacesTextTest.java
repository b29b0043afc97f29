package org.shopclime.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shopclime.climate.Climates;
import org.shopclime.climate.PlaceSearch;
import org.shopclime.climate.PlacesFound;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.quantity.Units;

class PlacesTextTest {
  private final Climates climates = Climates.load();

  private PlaceList list(String text, int most, OptionalDouble elevation) {
    PlacesFound found = PlaceSearch.of(climates.stations(), text);
    return new PlaceList(
        found,
        found.places().stream()
            .limit(most)
            .map(
                place ->
                    new PlaceList.Line(place, climates.find(place.station().id()).orElseThrow()))
            .toList(),
        elevation);
  }

  @Test
  void tellsAPlaceWhole() {
    assertThat(PlacesText.of(list("722230", 10, OptionalDouble.empty()), UnitSystem.INCH_POUND))
        .isEqualTo(
            """
            One weather station

              722230  Mobile Regional AP, AL  0.0 mi  217 ft
                hot, humid summers (91 °F, dew point 70 °F), mild winters (29 °F); July 81, January 47 °F

            Summers: the temperature passed in 1 % of the hours of a typical year, and the dew point then
            (55 °F and less feels dry, 65 °F and more humid). Winters: the temperature passed in 99 % of the
            hours. July and January: means of day and night.
            In the shop file: "place": {"station": "722230"}
            """);
  }

  @Test
  void tellsAPointWithDistances() {
    String text = PlacesText.of(list("30.7 -88.2", 1, OptionalDouble.empty()), UnitSystem.SI);
    assertThat(text)
        .startsWith("Weather stations near 30.7° N, 88.2° W, the nearest first\n\n")
        .contains("  722230  Mobile Regional AP, AL  5.1 km  66 m\n")
        .contains("(32.8 °C, dew point 21 °C)", "mild winters (−1.7 °C); July 27, January")
        .contains("(12.8 °C and less feels dry, 18.3 °C and more humid)")
        .contains("With --elevation")
        .doesNotContain("°F");
    assertThat(PlacesText.of(list("-10,20", 1, OptionalDouble.of(0)), UnitSystem.INCH_POUND))
        .startsWith("Weather stations near 10° S, 20° E, your shop at 0 ft, the nearest first\n")
        .contains("Take care: The nearest station is ")
        .doesNotContain("With --elevation");
  }

  @Test
  void tellsHeights() {
    OptionalDouble high = OptionalDouble.of(Units.metresFromFeet(6000));
    assertThat(PlacesText.of(list("mobile regional", 1, high), UnitSystem.INCH_POUND))
        .contains(", your shop at 6,000 ft\n")
        .contains("217 ft  5,783 ft below you\n")
        .contains("Take care: Mobile Regional AP lies 5,783 ft below you.");
    OptionalDouble near = OptionalDouble.of(Units.metresFromFeet(1200));
    assertThat(PlacesText.of(list("mobile regional", 1, near), UnitSystem.INCH_POUND))
        .contains("983 ft below you")
        .doesNotContain("Take care");
  }

  @Test
  void aHeightLikeOnesOwnIsNoDifference() {
    assertThat(PlaceList.beside(-0.1, UnitSystem.INCH_POUND)).isEqualTo("as high as you");
    assertThat(PlaceList.beside(0.31, UnitSystem.INCH_POUND)).isEqualTo("1 ft above you");
    assertThat(PlaceList.beside(-30, UnitSystem.SI)).isEqualTo("30 m below you");
  }

  /** 150 miles are 241.4 km. */
  @Test
  void warnsBeyondAHundredAndFiftyMiles() {
    assertThat(PlaceList.FAR).isBetween(241.3, 241.5);
    assertThat(PlaceList.HIGH).isBetween(304.79, 304.81);
  }

  @Test
  void aStateHasNoDistancesButNamesakes() {
    String text = PlacesText.of(list("Washington", 1, OptionalDouble.empty()), UnitSystem.SI);
    assertThat(text)
        .startsWith("Weather stations of Washington\n")
        .doesNotContain(" km")
        .contains("Also named so: ")
        .contains("724050 Washington DC Reagan AP, VA");
  }

  @Test
  void everyLineFitsATerminal() {
    for (UnitSystem units : UnitSystem.values()) {
      String text = PlacesText.of(list("48,-97", 2000, OptionalDouble.of(1000)), units);
      assertThat(text.lines()).allSatisfy(line -> assertThat(line.length()).isLessThan(101));
    }
  }

  @ParameterizedTest
  @CsvSource({
    "0,INCH_POUND,0.0 mi",
    "15.9,INCH_POUND,9.9 mi",
    "16.05,INCH_POUND,10 mi",
    "9.94,SI,9.9 km",
    "9.96,SI,10 km",
    "12345,SI,'12,345 km'"
  })
  void showsDistances(double km, UnitSystem units, String shown) {
    assertThat(PlaceList.distance(km, units)).isEqualTo(shown);
  }

  @Test
  void refusesToBeEmpty() {
    PlacesFound found = PlaceSearch.of(climates.stations(), "mobile regional");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new PlaceList(found, List.of(), OptionalDouble.empty()));
  }
}
