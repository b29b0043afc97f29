package org.shopclime.leakage;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * What a flow of air brings, against the factors of the trade.
 *
 * <p>Ideal gas at 70 °F with 0.010 kg/kg of water, ASHRAE Fundamentals (2017) ch. 1: h = 1.006 t +
 * W (2501 + 1.86 t). The factor 4840 takes the vapour less the water that leaves the coil (1076
 * BTU/lb), nearly the heat of evaporation at 0 °C, which stands here.
 */
class AirFactorsPublishedTest {

  private static final double BTU_PER_HOUR = 0.29307107; // W, NIST SP 811
  private static final double CFM = 0.3048 * 0.3048 * 0.3048 / 60;
  private static final double HUMIDITY_RATIO = 0.010;

  @ParameterizedTest
  @CsvFileSource(
      resources = {
        "/published/leakage/air-factors.csv",
        "/published/leakage/air-factors-computed.csv"
      },
      useHeadersInDisplayName = true)
  void agreesWithTheTrade(
      String id,
      String what,
      double pressureRatio,
      double cfm,
      double difference,
      double low,
      double high,
      double tolerance) {
    double kelvin = (70 - 32) / 1.8 + 273.15;
    double dryAir = cfm * CFM * 101_325 * pressureRatio / (287.042 * kelvin); // kg/s
    double heatPerUnit =
        switch (what) {
          case "sensible" -> (1006 + 1860 * HUMIDITY_RATIO) / 1.8;
          case "latent" -> 2501e3;
          case "grain" -> 2501e3 / 7000;
          case "total" -> 2326;
          default -> throw new IllegalArgumentException(what);
        };
    assertThat(dryAir * heatPerUnit * difference / BTU_PER_HOUR)
        .as("%s %s", id, what)
        .isBetween(low * (1 - tolerance), high * (1 + tolerance));
  }
}
