package org.shopclime.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;

import java.awt.geom.Point2D;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.climate.Climates;
import org.shopclime.climate.Station;

/** Where stations lie, and which is meant. */
class StationMapTest {

  static final Station MOBILE = station("722230", "Mobile Regional AP", "AL", 30.68, -88.25);
  static final Station DOWNTOWN = station("722235", "Mobile Downtown AP", "AL", 30.63, -88.07);
  static final Station DENVER = station("725650", "Denver Intl AP", "CO", 39.83, -104.65);
  static final Station ANCHORAGE = station("702730", "Anchorage Intl AP", "AK", 61.18, -150);
  static final List<Station> FEW = List.of(MOBILE, DOWNTOWN, DENVER, ANCHORAGE);

  static Station station(String id, String name, String state, double latitude, double longitude) {
    return new Station(id, name, state, -6, latitude, longitude, 60);
  }

  @Test
  void everyStationLiesInsideAndNoneUnderABox() {
    StationMap map = new StationMap(Climates.load().stations());
    assertThat(map.spots()).hasSizeGreaterThan(50);
    for (StationMap.Spot spot : map.spots()) {
      MapFrame own = MapFrame.of(spot.station().state());
      assertThat(own.box().contains(spot.x(), spot.y())).as(spot.toString()).isTrue();
      for (MapFrame frame : MapFrame.ALL) {
        if (frame != own && frame != MapFrame.LOWER_48) {
          assertThat(frame.box().contains(spot.x(), spot.y()))
              .as(spot + " under " + frame.title())
              .isFalse();
        }
      }
    }
  }

  @Test
  void thePointNearestWithinReachIsMeant() {
    StationMap map = new StationMap(FEW);
    StationMap.Spot mobile = map.of(MOBILE).orElseThrow();
    StationMap.Spot downtown = map.of(DOWNTOWN).orElseThrow();
    double apart = mobile.distance(downtown.x(), downtown.y());
    assertThat(apart).isBetween(0.2, 1.0);
    double x = mobile.x() + 0.4 * (downtown.x() - mobile.x());
    double y = mobile.y() + 0.4 * (downtown.y() - mobile.y());
    assertThat(map.near(x, y, apart)).contains(mobile);
    x = mobile.x() + 0.6 * (downtown.x() - mobile.x());
    y = mobile.y() + 0.6 * (downtown.y() - mobile.y());
    assertThat(map.near(x, y, apart)).contains(downtown);
    assertThat(map.near(x, y, 0.39 * apart)).isEmpty();
    assertThat(map.of(station("1", "Elsewhere", "AL", 31, -88))).isEmpty();
  }

  @Test
  void westIsLeftNorthIsUpAndAlaskaHasItsBox() {
    StationMap map = new StationMap(FEW);
    StationMap.Spot mobile = map.of(MOBILE).orElseThrow();
    StationMap.Spot denver = map.of(DENVER).orElseThrow();
    assertThat(denver.x()).isLessThan(mobile.x());
    assertThat(denver.y()).isLessThan(mobile.y());
    StationMap.Spot anchorage = map.of(ANCHORAGE).orElseThrow();
    assertThat(MapFrame.ALASKA.box().contains(anchorage.x(), anchorage.y())).isTrue();
  }

  @Test
  void statesAreNamedInTheMiddleOfTheirStations() {
    StationMap map = new StationMap(FEW);
    assertThat(map.names()).extracting(StationMap.Name::state).containsExactly("AL", "CO");
    StationMap.Spot mobile = map.of(MOBILE).orElseThrow();
    StationMap.Spot downtown = map.of(DOWNTOWN).orElseThrow();
    assertThat(map.names().get(0).x()).isCloseTo((mobile.x() + downtown.x()) / 2, offset(1e-12));
  }

  @Test
  void theWholeMapFitsAndPointsGoThereAndBack() {
    MapSight whole = MapSight.whole(500, 396);
    assertThat(whole.scale()).isEqualTo(5); // 500 / 100, and 396 would do for 6
    assertThat(whole.toScreen(0, 0)).isEqualTo(new Point2D.Double(0, 198 - 33 * 5));
    assertThat(whole.toMap(500, 198)).isEqualTo(new Point2D.Double(100, 33));
    MapSight close = whole.zoomed(3, 120, 200).dragged(17, -9);
    Point2D.Double back = close.toMap(31, 57);
    Point2D.Double there = close.toScreen(back.x, back.y);
    assertThat(there.distance(31, 57)).isLessThan(1e-9);
  }

  @Test
  void thePointUnderThePointerStaysWhileGoingCloser() {
    MapSight whole = MapSight.whole(600, 396);
    Point2D.Double under = whole.toMap(310, 205);
    MapSight closer = whole.zoomed(2, 310, 205);
    assertThat(closer.zoom()).isEqualTo(2);
    assertThat(closer.toScreen(under.x, under.y).distance(310, 205)).isLessThan(1e-9);
    assertThat(closer.zoomed(1000, 310, 205).zoom()).isEqualTo(MapSight.CLOSEST);
    assertThat(closer.zoomed(0.001, 310, 205)).isEqualTo(whole);
  }

  @Test
  void theMapDoesNotLeaveTheView() {
    MapSight close = MapSight.whole(600, 396).zoomed(2, 300, 198);
    MapSight far = close.dragged(10_000, 10_000);
    assertThat(far.toScreen(0, 0).distance(0, 0)).isLessThan(1e-9);
    MapSight corner = close.centred(MapFrame.WIDTH, MapFrame.HEIGHT);
    assertThat(corner.toScreen(MapFrame.WIDTH, MapFrame.HEIGHT).distance(600, 396))
        .isLessThan(1e-9);
    assertThat(Optional.of(corner.sized(300, 198)).map(MapSight::zoom)).contains(2.0);
    assertThatThrownBy(() -> new MapSight(0, 10, 1, 0, 0))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new MapSight(10, 10, Double.NaN, 0, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
