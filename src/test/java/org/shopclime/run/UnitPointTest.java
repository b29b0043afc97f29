package org.shopclime.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A unit against outdoor temperature. */
class UnitPointTest {

  private static final double RATED = MadeShops.btuh(12000);
  private static final double HUMID = 0.0165;

  /** Air of 80 °F with a wet bulb of 67 °F at sea level: dew point 60.4 °F. */
  private static final UnitPoint.Surroundings RATING =
      new UnitPoint.Surroundings(MadeShops.celsius(80), MadeShops.celsius(60.4), HUMID, 101_325);

  private static List<UnitPoint> curve(Cooling.Kind kind, double... fahrenheit) {
    return UnitPoint.curve(
        MadeShops.unit(kind, RATED),
        RATING,
        java.util.Arrays.stream(fahrenheit).map(MadeShops::celsius).boxed().toList());
  }

  /**
   * By pencil, wet bulb 19.44 °C: the published curve 0.6405 + 0.01568 w + 0.0004531 w² + 0.001615
   * t - 0.0001825 t² + 0.00006614 w t is 0.6405 + 0.3049 + 0.1713 + 0.0565 - 0.2236 + 0.0450 =
   * 0.9947 at 35 °C and 0.6405 + 0.3049 + 0.1713 + 0.0745 - 0.3880 + 0.0593 = 0.8624 at 46.11 °C.
   */
  @Test
  void capacityFallsAsByPencil() {
    List<UnitPoint> points = curve(Cooling.Kind.WINDOW, 95, 115);
    assertThat(points.get(0).total() / RATED).isCloseTo(0.9947, within(0.001));
    assertThat(points.get(1).total() / RATED).isCloseTo(0.8624, within(0.001));
    assertThat(points.get(0).sensible() / RATED).isCloseTo(0.70, within(0.01));
  }

  @Test
  void theEdgeIsHeldAndTold() {
    List<UnitPoint> points = curve(Cooling.Kind.WINDOW, 70, 75, 115, 120);
    assertThat(points.get(0).beyond()).containsExactly("OUTDOOR_LOW");
    assertThat(points.get(1).beyond()).isEmpty();
    assertThat(points.get(2).beyond()).isEmpty();
    assertThat(points.get(3).beyond()).containsExactly("OUTDOOR_HIGH");
    assertThat(points.get(3).total()).isCloseTo(points.get(2).total(), within(1e-6));
    assertThat(points.get(3).power()).isCloseTo(points.get(2).power(), within(1e-6));
  }

  /**
   * One that breathes room air feels outdoors only by what it draws in, which is the most of all.
   */
  @ParameterizedTest
  @EnumSource(Cooling.Kind.class)
  void allGiveLessInHeat(Cooling.Kind kind) {
    List<UnitPoint> points = curve(kind, 80, 90, 100, 110);
    for (int i = 1; i < points.size(); i++) {
      assertThat(points.get(i).sensible()).isLessThan(points.get(i - 1).sensible());
      assertThat(points.get(i).power()).isGreaterThanOrEqualTo(points.get(i - 1).power());
    }
  }

  /** 300 cfm of air at 110 instead of 80 °F: 1.08 x 300 x 30 = 9,700 BTU/h, nearly all of it. */
  @Test
  void oneHoseIsWorthLittleInHeat() {
    UnitPoint one = curve(Cooling.Kind.PORTABLE_ONE_HOSE, 110).get(0);
    UnitPoint window = curve(Cooling.Kind.WINDOW, 110).get(0);
    assertThat(one.sensible()).isLessThan(window.sensible() / 2);
    assertThat(one.beyond()).isEmpty();
  }

  /** Outdoor air that would hold more water than it can counts as saturated. */
  @Test
  void coolOutdoorsIsNeverFog() {
    assertThat(curve(Cooling.Kind.PORTABLE_ONE_HOSE, 60).get(0).latent()).isFinite();
    UnitPoint.Surroundings fog = new UnitPoint.Surroundings(25, 40, HUMID, 101_325);
    UnitPoint damp =
        UnitPoint.curve(MadeShops.unit(Cooling.Kind.WINDOW, RATED), fog, List.of(30.0)).get(0);
    assertThat(damp.total()).isCloseTo(damp.sensible() + damp.latent(), withinPercentage(1e-6));
    assertThat(damp.beyond()).containsExactly("WET_BULB_HIGH");
  }
}
