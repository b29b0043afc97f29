package org.shopclime.sun;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Sun near the horizon, where the fit of the clear sky is weakest. */
class LowSunTest {

  @Test
  void neverLessThanNothingHoweverCleanTheAir() {
    for (double altitude = 0.01; altitude < 6; altitude += 0.01) {
      for (double aerosol : new double[] {0, 0.005, 0.02, 0.1, 0.5, 2}) {
        for (double pressure : new double[] {60_000, 85_000, 101_325}) {
          ClearSky sky = BirdClearSky.at(altitude, 15, pressure, 0.3, 0.5, aerosol, 0.2);
          assertThat(sky.diffuseHorizontal()).isNotNegative();
        }
      }
    }
  }

  @Test
  void whatIsLeftOutBelowHalfADegreeIsSmall() {
    for (double aerosol : new double[] {0, 0.05, 0.2}) {
      ClearSky sky = BirdClearSky.at(0.51, 15, 101_325, 0.3, 0.5, aerosol, 0.2);
      assertThat(sky.globalHorizontal()).isLessThan(aerosol == 0 ? 6 : 2);
    }
  }
}
