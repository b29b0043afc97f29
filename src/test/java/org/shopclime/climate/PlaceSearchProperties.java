package org.shopclime.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.StringLength;

/** What holds for every search among the stations that travel with the program. */
class PlaceSearchProperties {
  private static final List<Station> STATIONS =
      Climates.load().all().stream().map(StationClimate::station).toList();

  /** Angle between two points by their vectors: another way than the one of the program. */
  private static double kilometres(GeoPoint one, GeoPoint other) {
    double[] a = vector(one);
    double[] b = vector(other);
    double x = a[1] * b[2] - a[2] * b[1];
    double y = a[2] * b[0] - a[0] * b[2];
    double z = a[0] * b[1] - a[1] * b[0];
    double cross = Math.sqrt(x * x + y * y + z * z);
    return 6371 * Math.atan2(cross, a[0] * b[0] + a[1] * b[1] + a[2] * b[2]);
  }

  private static double[] vector(GeoPoint point) {
    double north = Math.toRadians(point.latitudeDeg());
    double east = Math.toRadians(point.longitudeDeg());
    return new double[] {
      Math.cos(north) * Math.cos(east), Math.cos(north) * Math.sin(east), Math.sin(north)
    };
  }

  @Property
  void noStationIsNearerThanTheFirst(
      @ForAll @DoubleRange(min = -90, max = 90) double north,
      @ForAll @DoubleRange(min = -180, max = 180) double east) {
    GeoPoint point = new GeoPoint(north, east);
    List<FoundPlace> places =
        PlaceSearch.of(STATIONS, String.format(Locale.ROOT, "%.9f,%.9f", north, east)).places();
    assertThat(places).hasSameSizeAs(STATIONS);
    double last = 0;
    for (FoundPlace place : places) {
      assertThat(place.distanceKm()).isGreaterThanOrEqualTo(last);
      assertThat(place.distanceKm())
          .isCloseTo(kilometres(point, GeoPoint.of(place.station())), within(0.01));
      last = place.distanceKm();
    }
    double least =
        STATIONS.stream()
            .mapToDouble(one -> kilometres(point, GeoPoint.of(one)))
            .min()
            .orElseThrow();
    assertThat(places.get(0).distanceKm()).isCloseTo(least, within(0.01));
  }

  @Property
  void everyTextIsAnswered(@ForAll @StringLength(max = 40) String text) {
    assertThat(PlaceSearch.of(STATIONS, text)).isNotNull();
  }
}
