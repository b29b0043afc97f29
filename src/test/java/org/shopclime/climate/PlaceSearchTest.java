package org.shopclime.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PlaceSearchTest {
  /** Names, numbers and places of the TMY3 set (NREL/TP-581-43156, table of stations). */
  private static final List<Station> SOME =
      List.of(
          station("722235", "Mobile Downtown AP", "AL", 30.633, -88.067),
          station("722230", "Mobile Regional AP", "AL", 30.683, -88.250),
          station("726980", "Portland International AP", "OR", 45.600, -122.617),
          station("726986", "Portland/Hillsboro", "OR", 45.533, -122.950),
          station("726060", "Portland Intl Jetport", "ME", 43.650, -70.300),
          station("722596", "Fort Worth Meacham", "TX", 32.817, -97.367),
          station("722590", "Dallas-Fort Worth Intl AP", "TX", 32.900, -97.017),
          station("724340", "St Louis Lambert Intl Arpt", "MO", 38.750, -90.383),
          station("725314", "Cahokia/St. Louis", "IL", 38.567, -90.150),
          station("726130", "Mount Washington", "NH", 44.267, -71.300),
          station("724050", "Washington DC Reagan AP", "VA", 38.867, -77.033),
          station("725117", "Washington (AWOS)", "PA", 40.133, -80.283),
          station("727930", "Seattle Seattle-Tacoma Intl A", "WA", 47.467, -122.317),
          station("785260", "San Juan Intl Arpt", "PR", 18.433, -66.000),
          station("785140", "Aquadilla/Borinquen", "PR", 18.500, -67.133),
          station("912120", "Guam WFO", "GU", 13.483, 144.800),
          station("725095", "Worchester Regional Arpt", "MA", 42.267, -71.883),
          station("722650", "Midland International AP", "TX", 31.933, -102.200),
          station("725056", "New York Central Prk Obs Belv", "NY", 40.783, -73.967),
          station("725180", "Albany County AP", "NY", 42.750, -73.800));

  private static Station station(String id, String name, String state, double north, double east) {
    return new Station(id, name, state, -6, north, east, 100);
  }

  private static List<String> ids(PlacesFound found) {
    return found.places().stream().map(one -> one.station().id()).toList();
  }

  private static PlacesFound search(String text) {
    return PlaceSearch.of(SOME, text);
  }

  @ParameterizedTest
  @CsvSource({
    "mobile,722230 722235",
    "MOBILE AL,722230 722235",
    "'Mobile, Alabama',722230 722235",
    "722230,722230",
    "portland,726980 726060 726986",
    "'portland, or',726980 726986",
    "portland maine,726060",
    "portland international,726980 726060",
    "portland intl,726980 726060",
    "ft worth,722596 722590",
    "Ft. Worth,722596 722590",
    "fort worth texas,722596 722590",
    "st louis,724340 725314",
    "Saint Louis,724340 725314",
    "st.louis mo,724340",
    "mt washington,726130",
    "mount washington nh,726130",
    "'Washington, D.C.',724050",
    "dc,724050",
    "worcester,725095",
    "aguadilla,785140",
    "Borinquén,785140",
    "midl,722650",
    "s,785260 727930 724340 725314",
    "new york city,''",
    "albany new york,725180",
    "albany ny,725180",
    "se ta,727930",
    "port in,726980 726060"
  })
  void findsNames(String text, String ids) {
    assertThat(String.join(" ", ids(search(text)))).isEqualTo(ids);
  }

  @ParameterizedTest
  @CsvSource({
    "TX,Texas,722590 722596 722650",
    "texas,Texas,722590 722596 722650",
    "PR,Puerto Rico,785140 785260",
    "Puerto Rico,Puerto Rico,785140 785260",
    "gu,Guam,912120",
    "Guam,Guam,912120",
    "N.Y.,New York,725056 725180",
    "new york,New York,725056 725180",
    "washington,Washington,727930"
  })
  void findsStates(String text, String name, String ids) {
    PlacesFound found = search(text);
    assertThat(String.join(" ", ids(found))).isEqualTo(ids);
    assertThat(((PlacesFound.InState) found).name()).isEqualTo(name);
  }

  @Test
  void aStateNamesItsNamesakesElsewhere() {
    assertThat(((PlacesFound.InState) search("Washington")).namesakes())
        .extracting(Station::id)
        .containsExactlyInAnyOrder("724050", "725117");
    assertThat(((PlacesFound.InState) search("WA")).namesakes()).hasSize(2);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "30.7,-88.2",
        "30.7, -88.2",
        "30.7 -88.2",
        " 30.7;-88.2 ",
        "30.7N 88.2W",
        "30.7 N, 88.2 W",
        "N30.7 W88.2",
        "n 30.7, w 88.2",
        "88.2W 30.7N",
        "30.7° N 88.2° W",
        "+30.7 −88.2",
        "30°42'N 88°12'W",
        "30° 42′ 0″ N, 88° 12′ 0″ W",
        "30.7 W88.2",
        "30.7 deg north, 88.2 degrees west",
        "lat 30.7 lon -88.2",
        "Latitude: 30.7, Longitude: -88.2",
        "(30.7, -88.2)"
      })
  void readsAPointHoweverItIsWritten(String text) {
    PlacesFound.Near found = (PlacesFound.Near) search(text);
    assertThat(found.point().latitudeDeg()).isCloseTo(30.7, within(1e-9));
    assertThat(found.point().longitudeDeg()).isCloseTo(-88.2, within(1e-9));
    assertThat(ids(found)).hasSameSizeAs(SOME).startsWith("722230", "722235");
  }

  @ParameterizedTest
  @CsvSource({
    "'13.5 144.8',13.5,144.8",
    "'-14.3,-170.7',-14.3,-170.7",
    "14.3S 170.7W,-14.3,-170.7",
    "'90,180',90,180",
    "'-0,-.5',0,-0.5"
  })
  void readsPointsOfAllTheWorld(String text, double north, double east) {
    assertThat(((PlacesFound.Near) search(text)).point()).isEqualTo(new GeoPoint(north, east));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "95,-88|a latitude of 95°",
        "-90.5 20|a latitude of -90.5°",
        "30 -200|a longitude of -200°",
        "100S 20W|a latitude of -100°",
        "30.7|\"30.7\"",
        "30,7 -88,2|\"30,7 -88,2\"",
        "30 N 88 N|\"30 N 88 N\"",
        "30E 88W|\"30E 88W\"",
        "30.7N -88.2W|\"30.7N -88.2W\"",
        "30.7W88.2|\"30.7W88.2\"",
        "30°42'N88°12'W|\"30°42'N88°12'W\"",
        "30°75'N 88°12'W|\"30°75'N 88°12'W\"",
        "1 2 3|\"1 2 3\""
      })
  void saysWhatIsWrongWithAPoint(String text, String found) {
    PlacesFound.Nothing nothing = (PlacesFound.Nothing) search(text);
    assertThat(nothing.found()).isEqualTo(found);
    assertThat(nothing.takes()).startsWith("latitude and longitude in degrees");
    assertThat(nothing.places()).isEmpty();
    assertThat(nothing.alike()).isEmpty();
  }

  @Test
  void namesWhatIsSpeltAlikeWhereNothingFits() {
    PlacesFound.Nothing nothing = (PlacesFound.Nothing) search("Mobeel");
    assertThat(nothing.found()).isEqualTo("\"Mobeel\"");
    assertThat(nothing.alike()).hasSize(5);
    assertThat(nothing.alike().get(0).name()).startsWith("Mobile");
    assertThat(((PlacesFound.Nothing) search("Foley, AL")).alike())
        .as("only those of the state that was named")
        .extracting(Station::state)
        .containsOnly("AL");
  }

  @Test
  void anUnknownNumberIsNoZipCode() {
    PlacesFound.Nothing nothing = (PlacesFound.Nothing) search("722231");
    assertThat(nothing.found()).isEqualTo("the number 722231");
    assertThat(nothing.takes()).endsWith("no ZIP code");
    assertThat(nothing.alike().get(0).id()).isIn("722230", "722235");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "  ", "\t"})
  void nothingFindsNothing(String text) {
    assertThat(((PlacesFound.Nothing) search(text)).found()).isEqualTo("nothing");
  }

  @ParameterizedTest
  @ValueSource(strings = {",;", "?", "°", "'", "\u0000", "n", "nsew 1", "🙂"})
  void strangeTextsAreNoFault(String text) {
    assertThat(search(text)).isNotNull();
  }

  @Test
  void distancesOfNamesAreFromTheFirst() {
    List<FoundPlace> places = search("mobile").places();
    assertThat(places.get(0).distanceKm()).isZero();
    // 0.183 degrees of longitude at 30.66 N and 0.05 of latitude: 17.5 and 5.6 km.
    assertThat(places.get(1).distanceKm()).isCloseTo(18.4, within(0.1));
  }
}
