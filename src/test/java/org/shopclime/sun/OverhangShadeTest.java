package org.shopclime.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shade by overhang and fins against plain geometry. */
class OverhangShadeTest {

  private static final Shading EAVE = Shading.overhang(3, 2, 1, 0.5).withReach(100, 100);

  /** A long eave: the shadow reaches depth x tan(profile angle) below the eave. */
  @ParameterizedTest
  @CsvSource({"45,180", "60,200", "20,140", "10,180", "75,180", "50,230"})
  void longEaveByProfileAngle(double altitude, double azimuth) {
    double profile = Math.tan(Math.toRadians(altitude)) / Math.cos(Math.toRadians(azimuth - 180));
    double shadow = Math.max(0, Math.min(2, profile - 0.5));
    assertThat(OverhangShade.sunlitFraction(new SunAngles(altitude, azimuth), 180, EAVE))
        .isCloseTo(1 - shadow / 2, within(1e-9));
  }

  /** Overhang as wide as the window, sun 45 degrees to the left at profile angle 45 degrees. */
  @Test
  void sunComesInBesideAShortOverhang() {
    // South wall: left as seen from outdoors is west (225). Both shadow shifts are 1 m.
    SunAngles west = new SunAngles(Math.toDegrees(Math.atan(Math.sqrt(0.5))), 225);
    // The parallelogram from the top edge leaning right: 1 m high, cut by the right edge: 3 x 1 -
    // 1/2.
    assertThat(OverhangShade.sunlitFraction(west, 180, 3, 2, 1, 0))
        .isCloseTo(1 - 2.5 / 6, within(1e-9));
    SunAngles east = new SunAngles(west.altitudeDeg(), 135);
    assertThat(OverhangShade.sunlitFraction(east, 180, 3, 2, 1, 0))
        .isCloseTo(1 - 2.5 / 6, within(1e-9));
    // Reaching 1 m further to the left it shades the whole upper metre from a western sun only.
    Shading left = Shading.overhang(3, 2, 1, 0).withReach(1, 0);
    assertThat(OverhangShade.sunlitFraction(west, 180, left)).isCloseTo(0.5, within(1e-9));
    assertThat(OverhangShade.sunlitFraction(east, 180, left)).isCloseTo(1 - 2.5 / 6, within(1e-9));
  }

  @Test
  void finsShadeFromTheirOwnSide() {
    Fin fin = new Fin(1, 0.25, 50, 50);
    Shading left = Shading.overhang(3, 2, 0, 0).withFins(fin, Fin.NONE);
    Shading right = Shading.overhang(3, 2, 0, 0).withFins(Fin.NONE, fin);
    SunAngles west = new SunAngles(20, 225);
    SunAngles east = new SunAngles(20, 135);
    // The shadow is 1 m x tan 45 wide, less the gap: 0.75 of 3 m.
    assertThat(OverhangShade.sunlitFraction(west, 180, left)).isCloseTo(0.75, within(1e-9));
    assertThat(OverhangShade.sunlitFraction(east, 180, left)).isEqualTo(1);
    assertThat(OverhangShade.sunlitFraction(east, 180, right)).isCloseTo(0.75, within(1e-9));
    assertThat(OverhangShade.sunlitFraction(west, 180, right)).isEqualTo(1);
  }

  @Test
  void shortFinEndsAboveAndBelow() {
    // Fin from sill to head, sun 45 degrees left, shadow falls 1 m: 1 x 2 less the triangle above.
    SunAngles west = new SunAngles(Math.toDegrees(Math.atan(Math.sqrt(0.5))), 225);
    Shading fin = Shading.overhang(3, 2, 0, 0).withFins(new Fin(1, 0, 0, 0), Fin.NONE);
    assertThat(OverhangShade.sunlitFraction(west, 180, fin)).isCloseTo(1 - 1.5 / 6, within(1e-9));
    Shading below = Shading.overhang(3, 2, 0, 0).withFins(new Fin(1, 0, -1, 5), Fin.NONE);
    // Now it starts 1 m below the head: the shadow's top runs from there down to the sill.
    assertThat(OverhangShade.sunlitFraction(west, 180, below)).isCloseTo(1 - 0.5 / 6, within(1e-9));
  }

  @Test
  void shadowsThatOverlapCountOnce() {
    SunAngles west = new SunAngles(Math.toDegrees(Math.atan(Math.sqrt(0.5))), 225);
    Fin high = new Fin(1, 0, 50, 50);
    Shading both = Shading.overhang(3, 2, 1, 0).withReach(9, 9).withFins(high, Fin.NONE);
    // Upper metre by the eave, left metre by the fin, their square metre once.
    assertThat(OverhangShade.sunlitFraction(west, 180, both))
        .isCloseTo(1 - (3 + 2 - 1) / 6.0, within(1e-9));
    Shading three = both.withFins(high, high);
    assertThat(OverhangShade.sunlitFraction(west, 180, three))
        .isCloseTo(1 - (3 + 2 - 1) / 6.0, within(1e-9));
  }

  @Test
  void noSunFromBehindOrBelow() {
    assertThat(OverhangShade.sunlitFraction(new SunAngles(30, 0), 180, EAVE)).isZero();
    assertThat(OverhangShade.sunlitFraction(new SunAngles(30, 270), 180, EAVE)).isZero();
    assertThat(OverhangShade.sunlitFraction(new SunAngles(-1, 180), 180, EAVE)).isZero();
    assertThat(OverhangShade.sunlitFraction(new SunAngles(90, 180), 180, EAVE)).isZero();
    Shading bare = Shading.overhang(3, 2, 0, 0);
    assertThat(OverhangShade.sunlitFraction(new SunAngles(80, 95), 180, bare)).isEqualTo(1);
  }

  /**
   * Sky below a long eave in closed form: from a point s below the eave a wall sees s/sqrt(s² +
   * depth²) of its sky; the mean over the window integrates to a root.
   */
  @ParameterizedTest
  @CsvSource({"1,0.5,2", "0.3,0,2", "2,0.2,1", "0,0,1"})
  void skyBelowALongEave(double depth, double gap, double height) {
    double expected = (Math.hypot(gap + height, depth) - Math.hypot(gap, depth)) / height;
    Shading eave = Shading.overhang(3, height, depth, gap).withReach(900, 900);
    assertThat(OverhangShade.skyFraction(eave)).isCloseTo(expected, within(0.002));
    assertThat(OverhangShade.groundFraction(eave)).isEqualTo(1);
  }

  /** An overhang alone is told in closed form, one between fins by cutting polygons. */
  @ParameterizedTest
  @CsvSource({
    "1.2,0.4,0.5,0.3",
    "0.4,0,0,0",
    "2,0.1,-0.5,4",
    "0.8,1,-1.2,-0.2",
    "5,0,-3.5,2",
    "3,2,9,-2.5"
  })
  void overhangIsTheSameBesideFinsTooFarToMatter(
      double depth, double gap, double left, double right) {
    Shading alone = Shading.overhang(3, 2, depth, gap).withReach(left, right);
    Shading finned = alone.withFins(new Fin(1e-9, 90, 0, 0), Fin.NONE);
    assertThat(OverhangShade.skyFraction(alone))
        .isCloseTo(OverhangShade.skyFraction(finned), within(1e-9));
    for (double azimuth = 95; azimuth < 270; azimuth += 12.5) {
      for (double altitude = 1; altitude < 89; altitude += 8) {
        SunAngles sun = new SunAngles(altitude, azimuth);
        assertThat(OverhangShade.sunlitFraction(sun, 180, alone))
            .as("sun at %s", sun)
            .isCloseTo(OverhangShade.sunlitFraction(sun, 180, finned), within(1e-9));
      }
    }
  }

  @Test
  void tallFinsTakeSkyAndGroundAlike() {
    Fin fin = new Fin(1, 0, 100, 100);
    Shading fins = Shading.overhang(2, 2, 0, 0).withFins(fin, fin);
    double sky = OverhangShade.skyFraction(fins);
    assertThat(sky).isBetween(0.3, 0.9).isCloseTo(OverhangShade.groundFraction(fins), within(1e-9));
    // Crossed strings, two endless parallel fins 2 apart, 1 deep: sqrt(5)/2 - 1/2.
    assertThat(sky).isCloseTo((Math.sqrt(5) - 1) / 2, within(0.003));
  }

  @Test
  void refusesWhatCannotStand() {
    assertThatThrownBy(() -> Shading.overhang(0, 2, 1, 0)).hasMessageContaining("width");
    assertThatThrownBy(() -> Shading.overhang(1, -2, 1, 0)).hasMessageContaining("height");
    assertThatThrownBy(() -> Shading.overhang(1, 2, -1, 0)).hasMessageContaining("depth");
    assertThatThrownBy(() -> Shading.overhang(1, 2, 1, -1)).hasMessageContaining("gap");
    assertThatThrownBy(() -> EAVE.withReach(-101, 0)).hasMessageContaining("left");
    assertThatThrownBy(() -> EAVE.withReach(0, -101)).hasMessageContaining("right");
    assertThatThrownBy(() -> EAVE.withReach(-2, -2)).hasMessageContaining("overhang width");
    assertThatThrownBy(() -> EAVE.withFins(new Fin(1, 0, -2, -1), Fin.NONE))
        .hasMessageContaining("fin reach");
    assertThatThrownBy(() -> EAVE.withFins(Fin.NONE, new Fin(1, 0, -2, -1)))
        .hasMessageContaining("fin reach");
    assertThatThrownBy(() -> new Fin(-1, 0, 0, 0)).hasMessageContaining("fin depth");
    assertThatThrownBy(() -> new Fin(1, -1, 0, 0)).hasMessageContaining("fin gap");
    assertThatThrownBy(() -> new Fin(1, 0, 101, 0)).hasMessageContaining("above");
    assertThatThrownBy(() -> new Fin(1, 0, 0, 101)).hasMessageContaining("below");
    assertThatThrownBy(() -> OverhangShade.sunlitFraction(new SunAngles(1, 1), 400, EAVE))
        .hasMessageContaining("azimuth");
  }
}
