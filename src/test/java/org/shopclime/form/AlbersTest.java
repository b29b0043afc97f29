package org.shopclime.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.offset;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.Point2D;
import org.junit.jupiter.api.Test;

class AlbersTest {

  private static final Albers MAP = new Albers(29.5, 45.5, 37.5, -96);

  @Test
  void theOriginIsNothingAndEastIsRight() {
    Point2D.Double origin = MAP.of(37.5, -96);
    assertThat(origin.x).isCloseTo(0, offset(1e-15));
    assertThat(origin.y).isCloseTo(0, offset(1e-15));
    assertThat(MAP.of(37.5, -95).x).isPositive();
    assertThat(MAP.of(38.5, -96).y).isPositive();
    assertThat(MAP.of(40, -90).x).isCloseTo(-MAP.of(40, -102).x, offset(1e-15));
  }

  /**
   * Area of a piece of the unit sphere: Archimedes, difference of longitude times that of sines.
   */
  @Test
  void areasAreKept() {
    for (double[] corner : new double[][] {{25, -125}, {37, -96}, {48, -70}}) {
      double step = 0.01;
      Point2D.Double at = MAP.of(corner[0], corner[1]);
      Point2D.Double east = MAP.of(corner[0], corner[1] + step);
      Point2D.Double north = MAP.of(corner[0] + step, corner[1]);
      double area = (east.x - at.x) * (north.y - at.y) - (north.x - at.x) * (east.y - at.y);
      double sphere =
          Math.toRadians(step)
              * (Math.sin(Math.toRadians(corner[0] + step)) - Math.sin(Math.toRadians(corner[0])));
      assertThat(area / sphere).isCloseTo(1, within(2e-4));
    }
  }

  /** Along a standard parallel the scale is true: an arc is cos(latitude) times its longitude. */
  @Test
  void standardParallelsAreTrue() {
    for (double latitude : new double[] {29.5, 45.5}) {
      Point2D.Double one = MAP.of(latitude, -100);
      Point2D.Double other = MAP.of(latitude, -99.99);
      double arc = Math.toRadians(0.01) * Math.cos(Math.toRadians(latitude));
      assertThat(one.distance(other) / arc).isCloseTo(1, within(1e-6));
    }
  }

  @Test
  void islandsBeyondTheDateLineStayByTheirNeighbours() {
    Albers alaska = new Albers(55, 65, 60, -154);
    assertThat(alaska.of(52, 179.9).distance(alaska.of(52, -179.9))).isLessThan(0.01);
  }

  @Test
  void parallelsThatMakeNoConeAreRefused() {
    assertThatThrownBy(() -> new Albers(-30, 30, 0, 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("-30");
  }
}
