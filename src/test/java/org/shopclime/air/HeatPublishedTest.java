package org.shopclime.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Heat index and wet-bulb globe temperature against figures from outside. */
class HeatPublishedTest {

  private static final double SEA_LEVEL = 101_325;

  @ParameterizedTest
  @CsvFileSource(resources = "/published/air/heat-index.csv", useHeadersInDisplayName = true)
  void theChart(String id, double fahrenheit, double percent, double index, double adjustment) {
    double ours = HeatIndex.of((fahrenheit - 32) / 1.8, percent / 100) * 1.8 + 32;
    assertThat(ours - adjustment).as(id).isCloseTo(index, offset(1.0));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/air/globe.csv", useHeadersInDisplayName = true)
  void theGlobe(String id, double globe, double air, double speed, double radiant) {
    assertThat(WetBulbGlobe.globe(air, radiant, speed)).as(id).isCloseTo(globe, offset(0.1));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "/published/air/natural-wet-bulb.csv", useHeadersInDisplayName = true)
  void theWick(String id, double air, double percent, double speed, double radiant) {
    double ratio = MoistAir.humidityRatioFromRelativeHumidity(air, percent / 100, SEA_LEVEL);
    double wetBulb = MoistAir.wetBulb(air, ratio, SEA_LEVEL);
    double globe = WetBulbGlobe.globe(air, radiant, speed);
    double fit =
        globe - air < 4
            ? air - (0.96 + 0.069 * Math.log10(speed)) * (air - wetBulb)
            : wetBulb + 0.25 * (globe - air) + 0.10 / Math.pow(speed, 1.1) - 0.2;
    assertThat(WetBulbGlobe.naturalWetBulb(air, radiant, percent / 100, speed))
        .as(id)
        .isCloseTo(fit, offset(0.5));
  }

  @ParameterizedTest
  @CsvFileSource(
      resources = "/published/air/indoor-wet-bulb-globe.csv",
      useHeadersInDisplayName = true)
  void theSum(String id, double air, double wetBulb, double speed, double wbgt) {
    double ratio = MoistAir.humidityRatioFromWetBulb(air, wetBulb, SEA_LEVEL);
    double humidity = MoistAir.relativeHumidity(air, ratio, SEA_LEVEL);
    assertThat(WetBulbGlobe.indoors(air, air, humidity, speed)).as(id).isCloseTo(wbgt, offset(0.4));
  }
}
