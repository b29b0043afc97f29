package org.shopclime.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.shopclime.climate.Station;

/** What the picker lists while someone types. */
class PlaceFinderTest {

  private static final PlaceFinder NEAR =
      new PlaceFinder(StationMapTest.FEW, Optional.of(StationMapTest.DENVER));
  private static final PlaceFinder NOWHERE = new PlaceFinder(StationMapTest.FEW, Optional.empty());

  private static List<Station> stations(PlaceFinder.Found found) {
    return found.rows().stream().map(PlaceFinder.Row::station).toList();
  }

  @Test
  void nothingTypedListsAllTheNearestFirst() {
    PlaceFinder.Found found = NEAR.find("  ");
    assertThat(stations(found).get(0)).isEqualTo(StationMapTest.DENVER);
    assertThat(found.rows().get(0).km()).hasValue(0);
    assertThat(stations(found).get(3)).isEqualTo(StationMapTest.ANCHORAGE);
    assertThat(found.told()).isEqualTo("4 stations, those near Denver Intl AP first.");
    assertThat(found.kind()).isEqualTo(PlaceFinder.Kind.ALL);
  }

  @Test
  void withoutAPlaceAllAreListedByName() {
    PlaceFinder.Found found = NOWHERE.find("");
    assertThat(stations(found))
        .containsExactly(
            StationMapTest.ANCHORAGE,
            StationMapTest.DENVER,
            StationMapTest.DOWNTOWN,
            StationMapTest.MOBILE);
    assertThat(found.rows()).extracting(PlaceFinder.Row::km).containsOnly(OptionalDouble.empty());
    assertThat(found.told()).isEqualTo("4 stations by name.");
  }

  @Test
  void namesStatesAndNumbersFit() {
    assertThat(stations(NEAR.find("mob")))
        .containsExactlyInAnyOrder(StationMapTest.MOBILE, StationMapTest.DOWNTOWN);
    assertThat(NEAR.find("mob").told())
        .isEqualTo("2 stations fit. Distances are from Denver Intl AP.");
    assertThat(NOWHERE.find("mob").told()).isEqualTo("2 stations fit.");
    assertThat(stations(NEAR.find("CO"))).containsExactly(StationMapTest.DENVER);
    assertThat(NOWHERE.find("CO").told()).isEqualTo("1 station in Colorado.");
    assertThat(stations(NEAR.find("722235"))).containsExactly(StationMapTest.DOWNTOWN);
    assertThat(NEAR.find("mob").kind()).isEqualTo(PlaceFinder.Kind.FITTING);
    assertThat(NEAR.find("mob").ids()).containsExactlyInAnyOrder("722230", "722235");
  }

  @Test
  void aNumberFitsWhileItIsTyped() {
    assertThat(stations(NEAR.find("7222")))
        .containsExactly(StationMapTest.MOBILE, StationMapTest.DOWNTOWN);
    assertThat(NOWHERE.find("7222").told()).isEqualTo("2 stations begin so.");
    assertThat(NOWHERE.find("70").told()).isEqualTo("1 station begins so.");
    assertThat(NEAR.find("9999").kind()).isEqualTo(PlaceFinder.Kind.ALIKE);
  }

  @Test
  void aPointListsAllByTheirDistanceFromIt() {
    PlaceFinder.Found found = NEAR.find("30.68, -88.25");
    assertThat(stations(found)).startsWith(StationMapTest.MOBILE, StationMapTest.DOWNTOWN);
    assertThat(found.told()).isEqualTo("4 stations, those nearest to 30.68° N, 88.25° W first.");
    // 0.05° of latitude at 111.2 km and 0.18° of longitude at 95.6 km, by Pythagoras
    assertThat(found.rows().get(1).km().orElseThrow())
        .isCloseTo(Math.hypot(0.05 * 111.19, 0.18 * 95.63), offset(0.02));
  }

  @Test
  void whatFitsNothingSaysSoInWords() {
    PlaceFinder.Found found = NEAR.find("Denwer");
    assertThat(found.kind()).isEqualTo(PlaceFinder.Kind.ALIKE);
    assertThat(found.told())
        .startsWith("Nothing fits: found \"Denwer\"; takes ")
        .endsWith("Those most alike are listed; none is chosen.");
    assertThat(stations(found).get(0)).isEqualTo(StationMapTest.DENVER);
    PlaceFinder.Found far = NEAR.find("95, -88");
    assertThat(far.rows()).isEmpty();
    assertThat(far.told()).startsWith("Nothing fits: found").doesNotContain("alike");
  }
}
