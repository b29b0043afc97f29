package org.shopclime.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.awt.geom.Point2D;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The map's projection against its published example. */
class AlbersPublishedTest {

  @ParameterizedTest(name = "{0}")
  @CsvFileSource(resources = "/published/form/albers.csv", useHeadersInDisplayName = true)
  void placesAPoint(
      String id,
      double south,
      double north,
      double originLatitude,
      double originLongitude,
      double latitude,
      double longitude,
      double x,
      double y) {
    Point2D.Double point =
        new Albers(south, north, originLatitude, originLongitude).of(latitude, longitude);
    assertThat(point.x).as(id).isCloseTo(x, offset(5e-8));
    assertThat(point.y).as(id).isCloseTo(y, offset(5e-8));
  }
}
