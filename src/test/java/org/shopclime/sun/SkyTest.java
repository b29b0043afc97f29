package org.shopclime.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cases of the sky models that can be reckoned by hand, and what they refuse. */
class SkyTest {

  @Test
  void noSunAtNight() {
    assertThat(BirdClearSky.at(0, 1, 101_325, 0.3, 1.5, 0.1, 0.2)).isEqualTo(ClearSky.DARK);
    assertThat(BirdClearSky.at(-20, 1, 101_325, 0.3, 1.5, 0.1, 0.2)).isEqualTo(ClearSky.DARK);
  }

  /**
   * One case by hand from the report's equations: sun overhead, sea level, nothing but Rayleigh and
   * mixed gases. Mass 1/(1 + 0.15/93.885^1.25) = 0.99949; Rayleigh exp(-0.0903 x 0.99949 x 0.99951)
   * = 0.91371; gases exp(-0.0127) = 0.98738; beam 0.9662 x 0.91371 x 0.98738 = 0.8717 of outside.
   */
  @Test
  void dryCleanAirOverhead() {
    ClearSky sky = BirdClearSky.at(90, 94, 101_325, 0, 0, 0, 0);
    double outside = new AstronomicalDay(94).extraterrestrialNormal();
    assertThat(sky.directNormal() / outside).isCloseTo(0.8717, within(0.0002));
    // Half of what Rayleigh scatters: 0.79 x 0.98738 x 0.5 x 0.08629, over 1 - M + M^1.02, by 1.
    assertThat(sky.diffuseHorizontal() / outside).isCloseTo(0.03365, within(0.0001));
  }

  /**
   * Perez by hand: sun at 45 degrees south, direct normal 600, diffuse 200, day 94 (1367 W/m²).
   * Zenith 0.7854, cubed x 1.041 = 0.50434; clearness (4 + 0.50434)/1.50434 = 2.9942: bin 6. Mass
   * 1.4128; brightness 0.20670 (outside 1367 x 1.0000). F1 = 1.132 - 1.237 x 0.2067 - 0.412 x
   * 0.7854 = 0.5527; F2 = 0.288 - 0.823 x 0.2067 + 0.056 x 0.7854 = 0.1619. South wall: cosine
   * 0.7071, so the bright part counts whole: 200 x (0.4473/2 + 0.5527 + 0.1619) = 187.7.
   */
  @Test
  void southWallByHand() {
    FaceSun face = PerezSky.on(90, 180, new SunAngles(45, 180), 600, 200, 94, 0.2);
    assertThat(face.beam()).isCloseTo(424.26, within(0.01));
    assertThat(face.sky()).isCloseTo(187.7, within(0.3));
    assertThat(face.ground()).isCloseTo(0.1 * (200 + 424.26), within(0.01));
    assertThat(face.incidenceDeg()).isCloseTo(45, within(1e-9));
    assertThat(face.total()).isEqualTo(face.beam() + face.sky() + face.ground());
  }

  /**
   * Each clearness bin, on a wall turned away from the sun so that only the even part and the
   * horizon remain: sky/diffuse = (1 - F1)/2 + F2. Sun overhead at zenith 60: cubed x 1.041 =
   * 1.19550; mass 1.9927. By hand from Table 6 with diffuse 100, direct from the wanted clearness.
   */
  @ParameterizedTest
  @CsvSource({
    "1.03,-0.008,0.588,-0.062,-0.060,0.072,-0.022",
    "1.1,0.130,0.683,-0.151,-0.019,0.066,-0.029",
    "1.3,0.330,0.487,-0.221,0.055,-0.064,-0.026",
    "1.7,0.568,0.187,-0.295,0.109,-0.152,-0.014",
    "2,0.873,-0.392,-0.362,0.226,-0.462,0.001",
    "3,1.132,-1.237,-0.412,0.288,-0.823,0.056",
    "5,1.060,-1.600,-0.359,0.264,-1.127,0.131",
    "6.5,0.678,-0.327,-0.250,0.156,-1.377,0.251"
  })
  void eachBinOfClearness(
      double clearness, double a, double b, double c, double d, double e, double f) {
    double zenith = Math.PI / 3;
    double cube = 1.041 * zenith * zenith * zenith;
    double direct = 100 * (clearness * (1 + cube) - cube - 1);
    double brightness =
        100 * 1.9927 / (1367 * (1 + 0.033 * Math.cos(Math.toRadians(360.0 * 91 / 365))));
    double around = Math.max(0, a + b * brightness + c * zenith);
    double horizon = d + e * brightness + f * zenith;
    FaceSun face = PerezSky.on(90, 0, new SunAngles(30, 180), direct, 100, 94, 0);
    assertThat(face.sky()).isCloseTo(100 * ((1 - around) / 2 + horizon), within(0.02));
  }

  @Test
  void theBrightPartIsNeverMoreThanTheWhole() {
    // Half a degree of sun with far too much sky: only the bright part is left, over cos 85
    // degrees.
    FaceSun face = PerezSky.on(0, 180, new SunAngles(0.5, 180), 0, 500, 94, 0.2);
    assertThat(face.sky()).isCloseTo(500 * Math.sin(Math.toRadians(0.5)) / 0.0871557, within(1e-3));
  }

  @Test
  void skyTemperatureByHand() {
    // Clark-Allen: dew point 0 °C: 0.787 + 0.764 ln(273.15/273) = 0.78742; 293.15 x 0.94200 K.
    assertThat(SkyTemperature.clarkAllen(20, 0, 0)).isCloseTo(3.00, within(0.01));
    // Overcast by Walton: factor 1 + 0.224 - 0.35 + 0.28 = 1.154: emissivity 0.90868.
    assertThat(SkyTemperature.clarkAllen(20, 0, 10)).isCloseTo(13.06, within(0.02));
    // A sky cannot emit more than a black body: overcast and very damp, it is as warm as the air.
    assertThat(SkyTemperature.clarkAllen(32, 31, 10)).isCloseTo(32, within(1e-9));
    // Martin-Berdahl: dew point 10 °C at 6 h and 1000 mbar: 0.711 + 0.056 + 0.0073 = 0.7743.
    assertThat(SkyTemperature.martinBerdahl(20, 10, 6, 100_000, 0, 2000))
        .isCloseTo(1.84, within(0.01));
    // Overcast at 0 m: the sky is as warm as the air.
    assertThat(SkyTemperature.martinBerdahl(20, 10, 6, 100_000, 10, 0)).isCloseTo(20, within(1e-9));
    // Midnight adds 0.013, 1100 mbar 0.012.
    assertThat(SkyTemperature.martinBerdahl(20, 10, 24, 110_000, 0, 2000))
        .isCloseTo(293.15 * Math.pow(0.7993, 0.25) - 273.15, within(1e-9));
    // Half covered at 8200 m: 0.7743 + 0.2257 x 0.5 / e = 0.81582.
    assertThat(SkyTemperature.martinBerdahl(20, 10, 6, 100_000, 5, 8200))
        .isCloseTo(293.15 * Math.pow(0.815815, 0.25) - 273.15, within(1e-3));
    // A veil over the whole sky: 0.4 exp(-8000/8200) = 0.15079 of the missing 0.2257.
    assertThat(SkyTemperature.martinBerdahl(20, 10, 6, 100_000, 0, 10, 2000))
        .isCloseTo(293.15 * Math.pow(0.808333, 0.25) - 273.15, within(1e-3));
  }

  @Test
  void refusesWhatNoSkyHas() {
    assertThatThrownBy(() -> BirdClearSky.at(91, 1, 101_325, 0.3, 1, 0.1, 0.2))
        .hasMessageContaining("altitude");
    assertThatThrownBy(() -> BirdClearSky.at(50, 367, 101_325, 0.3, 1, 0.1, 0.2))
        .hasMessageContaining("day of year");
    assertThatThrownBy(() -> BirdClearSky.at(50, 1, 1013, 0.3, 1, 0.1, 0.2))
        .hasMessageContaining("pressure");
    assertThatThrownBy(() -> BirdClearSky.at(50, 1, 101_325, 3, 1, 0.1, 0.2))
        .hasMessageContaining("ozone");
    assertThatThrownBy(() -> BirdClearSky.at(50, 1, 101_325, 0.3, -1, 0.1, 0.2))
        .hasMessageContaining("water");
    assertThatThrownBy(() -> BirdClearSky.at(50, 1, 101_325, 0.3, 1, Double.NaN, 0.2))
        .hasMessageContaining("aerosol");
    assertThatThrownBy(() -> BirdClearSky.at(50, 1, 101_325, 0.3, 1, 0.1, 1.2))
        .hasMessageContaining("albedo");
    SunAngles sun = new SunAngles(30, 180);
    assertThatThrownBy(() -> PerezSky.on(181, 0, sun, 1, 1, 1, 0.2)).hasMessageContaining("tilt");
    assertThatThrownBy(() -> PerezSky.on(90, 361, sun, 1, 1, 1, 0.2))
        .hasMessageContaining("azimuth");
    assertThatThrownBy(() -> PerezSky.on(90, 0, sun, -1, 1, 1, 0.2)).hasMessageContaining("direct");
    assertThatThrownBy(() -> PerezSky.on(90, 0, sun, 1, -1, 1, 0.2))
        .hasMessageContaining("diffuse");
    assertThatThrownBy(() -> PerezSky.on(90, 0, sun, 1, 1, 1, 1.1)).hasMessageContaining("ground");
    assertThatThrownBy(() -> SkyTemperature.clarkAllen(99, 0, 0)).hasMessageContaining("dry bulb");
    assertThatThrownBy(() -> SkyTemperature.clarkAllen(20, 60, 0))
        .hasMessageContaining("dew point");
    assertThatThrownBy(() -> SkyTemperature.clarkAllen(20, 0, 11)).hasMessageContaining("cloud");
    assertThatThrownBy(() -> SkyTemperature.martinBerdahl(20, 0, 25, 1e5, 0, 0))
        .hasMessageContaining("hour");
    assertThatThrownBy(() -> SkyTemperature.martinBerdahl(20, 0, 5, 1e3, 0, 0))
        .hasMessageContaining("pressure");
    assertThatThrownBy(() -> SkyTemperature.martinBerdahl(20, 0, 5, 1e5, 0, -1))
        .hasMessageContaining("cloud base");
    assertThatThrownBy(() -> SkyTemperature.martinBerdahl(20, 0, 5, 1e5, 6, 5, 0))
        .hasMessageContaining("thin cloud");
    assertThatThrownBy(() -> DailyRangeProfile.ASHRAE_2009.fractionBelowPeak(25))
        .hasMessageContaining("hour");
    assertThatThrownBy(() -> DailyRangeProfile.ASHRAE_2009.temperature(1, 30, -1))
        .hasMessageContaining("range");
  }
}
