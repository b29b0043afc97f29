package org.shopclime.sun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Bird's clear sky against its own equations, worked out apart from the program, and against
 * standard spectra. Source: R. E. Bird and R. L. Hulstrom, A Simplified Clear Sky Model for Direct
 * and Diffuse Insolation on Horizontal Surfaces, SERI/TR-642-761 (1981).
 */
class BirdClearSkyPublishedTest {

  private static final int DAY = 202;
  private static final double OUTSIDE = new AstronomicalDay(DAY).extraterrestrialNormal();

  @ParameterizedTest
  @CsvFileSource(resources = "/published/sun/bird.csv", useHeadersInDisplayName = true)
  void byZenithAngle(
      String id,
      String atmosphere,
      double zenith,
      double pressure,
      double ozone,
      double water,
      double aerosol,
      double albedo,
      double beam,
      double sky) {
    ClearSky found = BirdClearSky.at(90 - zenith, DAY, pressure, ozone, water, aerosol, albedo);
    assertThat(found.directNormal() / OUTSIDE)
        .as("%s %s", id, atmosphere)
        .isCloseTo(beam, within(0.00001));
    assertThat(found.diffuseHorizontal() / OUTSIDE)
        .as("%s %s", id, atmosphere)
        .isCloseTo(sky, within(0.00001));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/sun/spectra.csv", useHeadersInDisplayName = true)
  void standardSpectra(
      String id, String standard, double ozone, double water, double depth, double expected) {
    double broadband = 0.2758 * 1.33 * depth + 0.35 * depth;
    ClearSky found = BirdClearSky.at(90 - 48.19, DAY, 101_325, ozone, water, broadband, 0.2);
    assertThat(1367 * found.directNormal() / OUTSIDE)
        .as("%s %s", id, standard)
        .isCloseTo(expected, withPercentage(5));
  }

  /** The report's equations once more, written from the report, over a grid of all inputs. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 15, 30, 45, 60, 70, 75, 80, 84, 86})
  void theEquationsOfTheReport(double zenith) {
    for (double millibar : new double[] {600, 840, 1013.25, 1040}) {
      for (double ozone : new double[] {0, 0.2, 0.3, 0.45}) {
        for (double water : new double[] {0, 0.3, 1.5, 5}) {
          for (double depth : new double[] {0, 0.05, 0.2, 0.5}) {
            for (double albedo : new double[] {0, 0.2, 0.7}) {
              compare(zenith, millibar, ozone, water, depth, albedo);
            }
          }
        }
      }
    }
  }

  private static void compare(
      double zenith, double millibar, double ozone, double water, double depth, double albedo) {
    double m = Math.pow(Math.cos(rad(zenith)) + 0.15 * Math.pow(93.885 - zenith, -1.25), -1);
    double mp = m * millibar / 1013.25;
    double tr = Math.exp(-0.0903 * Math.pow(mp, 0.84) * (1.0 + mp - Math.pow(mp, 1.01)));
    double xo = ozone * m;
    double to =
        1.0
            - 0.1611 * xo * Math.pow(1.0 + 139.48 * xo, -0.3035)
            - 0.002715 * xo * Math.pow(1.0 + 0.044 * xo + 0.0003 * Math.pow(xo, 2), -1);
    double tum = Math.exp(-0.0127 * Math.pow(mp, 0.26));
    double xw = water * m;
    double tw = 1.0 - 2.4959 * xw * Math.pow(Math.pow(1.0 + 79.034 * xw, 0.6828) + 6.385 * xw, -1);
    double ta =
        Math.exp(
            -Math.pow(depth, 0.873)
                * (1.0 + depth - Math.pow(depth, 0.7088))
                * Math.pow(m, 0.9108));
    double taa = 1.0 - 0.1 * (1.0 - m + Math.pow(m, 1.06)) * (1.0 - ta);
    double tas = ta / taa;
    double rs = 0.0685 + (1.0 - 0.84) * (1.0 - tas);
    double id = 0.9662 * ta * tw * tum * to * tr;
    double ias =
        Math.cos(rad(zenith))
            * (0.79 * to * tw * tum * taa)
            * (0.5 * (1.0 - tr) + 0.84 * (1.0 - tas))
            / (1.0 - m + Math.pow(m, 1.02));
    double it = (id * Math.cos(rad(zenith)) + ias) / (1.0 - albedo * rs);

    ClearSky found = BirdClearSky.at(90 - zenith, DAY, 100 * millibar, ozone, water, depth, albedo);
    assertThat(found.directNormal() / OUTSIDE).isCloseTo(id, within(1e-9));
    assertThat(found.globalHorizontal() / OUTSIDE).isCloseTo(it, within(1e-9));
    assertThat(found.diffuseHorizontal() / OUTSIDE)
        .isCloseTo(it - id * Math.cos(rad(zenith)), within(1e-9));
  }

  private static double rad(double degrees) {
    return degrees * Math.PI / 180;
  }

  /**
   * One part of the air at a time, by pencil: zenith 60, sea level. Mass 1/(0.5 + 0.15/33.885^1.25)
   * = 1/(0.5 + 0.15/81.754) = 1.99269.
   *
   * <ul>
   *   <li>Rayleigh: 1.99269^0.84 = 1.78455, 1.99269^1.01 = 2.00647: exp(-0.0903 x 1.78455 x (1 +
   *       1.99269 - 2.00647)) = exp(-0.0903 x 1.78455 x 0.98622) = exp(-0.15892) = 0.85306.
   *   <li>Mixed gases: 1.99269^0.26 = 1.19634: exp(-0.0127 x 1.19634) = exp(-0.015194) = 0.98492.
   *   <li>Ozone 0.34 cm: path 0.677514; 1 + 139.48 x 0.677514 = 95.4997, ^-0.3035 = 0.250651: 1 -
   *       0.1611 x 0.677514 x 0.250651 - 0.002715 x 0.677514/(1 + 0.02981 + 0.00014) = 1 - 0.027358
   *       - 0.001786 = 0.97086.
   *   <li>Water 1.42 cm: path 2.82962; 1 + 79.034 x 2.82962 = 224.636, ^0.6828 = 40.3265: 1 -
   *       7.06244/(40.3265 + 18.0671) = 1 - 0.120946 = 0.87905.
   *   <li>Aerosol 0.2: 0.2^0.873 = 0.245357, 0.2^0.7088 = 0.319573, 1.99269^0.9108 = 1.87383:
   *       exp(-0.245357 x 0.880427 x 1.87383) = exp(-0.404782) = 0.66712; absorbed part 1 - 0.1 x
   *       (1 - 1.99269 + 2.07685) x 0.33288 = 1 - 0.1 x 1.08416 x 0.33288 = 0.96391.
   * </ul>
   */
  @Test
  void eachPartOfTheAirByPencil() {
    ClearSky bare = pencil(0, 0, 0);
    // Without ozone, water and dust the beam is 0.9662 Tr Tg, the sky 0.79 x 0.5 x Tg x 0.5 (1 -
    // Tr)
    // over 1 - M + M^1.02 = 1.02767: their ratio tells Tr alone.
    double scattered = bare.diffuseHorizontal() / bare.directNormal() * 0.9662 * 1.02767 / 0.1975;
    double rayleigh = 1 / (1 + scattered);
    assertThat(rayleigh).as("Rayleigh").isCloseTo(0.85306, within(0.00001));
    assertThat(bare.directNormal() / OUTSIDE / 0.9662 / rayleigh)
        .as("mixed gases")
        .isCloseTo(0.98492, within(0.00001));
    assertThat(pencil(0.34, 0, 0).directNormal() / bare.directNormal())
        .as("ozone")
        .isCloseTo(0.97086, within(0.00001));
    assertThat(pencil(0, 1.42, 0).directNormal() / bare.directNormal())
        .as("water")
        .isCloseTo(0.87905, within(0.00001));
    assertThat(pencil(0, 0, 0.2).directNormal() / bare.directNormal())
        .as("aerosol")
        .isCloseTo(0.66712, within(0.00001));
    // Scattered by dust 0.66712/0.96391 = 0.69210: sky over bare sky is 0.96391 x (0.07347 + 0.84 x
    // 0.30790)/0.07347 = 0.96391 x 4.52032 = 4.35718.
    assertThat(pencil(0, 0, 0.2).diffuseHorizontal() / bare.diffuseHorizontal())
        .as("absorbed by the aerosol")
        .isCloseTo(4.35718, within(0.0005));
  }

  private static ClearSky pencil(double ozone, double water, double aerosol) {
    return BirdClearSky.at(30, DAY, 101_325, ozone, water, aerosol, 0);
  }
}
