package org.shopclime.air;

/**
 * Water vapour over one phase of water, by the equations of Hyland and Wexler (1983), as in ASHRAE
 * Handbook - Fundamentals (2017, SI), ch. 1, eq. 5 and 6. Temperatures in K, pressures in Pa.
 */
enum Phase {
  /** Over ice, eq. 5. */
  ICE {
    @Override
    double logPressure(double kelvin) {
      return -5.6745359e3 / kelvin
          + 6.3925247
          + kelvin
              * (-9.6778430e-3
                  + kelvin * (6.2215701e-7 + kelvin * (2.0747825e-9 + kelvin * -9.4840240e-13)))
          + 4.1635019 * Math.log(kelvin);
    }

    @Override
    double logSlope(double kelvin) {
      return (5.6745359e3 / kelvin + 4.1635019) / kelvin
          - 9.6778430e-3
          + kelvin * (2 * 6.2215701e-7 + kelvin * (3 * 2.0747825e-9 + kelvin * 4 * -9.4840240e-13));
    }

    @Override
    double estimate(double logRatio) {
      return 272.62 * logRatio / (22.46 - logRatio);
    }
  },

  /** Over liquid water, eq. 6. */
  WATER {
    @Override
    double logPressure(double kelvin) {
      return -5.8002206e3 / kelvin
          + 1.3914993
          + kelvin * (-4.8640239e-2 + kelvin * (4.1764768e-5 + kelvin * -1.4452093e-8))
          + 6.5459673 * Math.log(kelvin);
    }

    @Override
    double logSlope(double kelvin) {
      return (5.8002206e3 / kelvin + 6.5459673) / kelvin
          - 4.8640239e-2
          + kelvin * (2 * 4.1764768e-5 + kelvin * 3 * -1.4452093e-8);
    }

    @Override
    double estimate(double logRatio) {
      return 243.12 * logRatio / (17.62 - logRatio);
    }
  };

  /** 0 °C, K. */
  static final double ZERO_CELSIUS = 273.15;

  /** Temperature at which ice, water and vapour are in balance, °C. */
  static final double TRIPLE_POINT = 0.01;

  /** Pressure the estimates start from, Pa (World Meteorological Organization, Guide No. 8). */
  private static final double ESTIMATE_FROM = 611.2;

  /** A Newton step this small leaves an error far below 1e-9 K, as steps shrink by squares. */
  private static final double LAST_STEP = 1e-9;

  /** The estimates are within 1 K and three steps do. */
  private static final int MOST_STEPS = 20;

  /**
   * Logarithm of the saturation pressure.
   *
   * @param kelvin temperature, K
   * @return ln(pressure in Pa)
   */
  abstract double logPressure(double kelvin);

  /**
   * Derivative of {@link #logPressure}.
   *
   * @param kelvin temperature, K
   * @return slope, 1/K, above 0
   */
  abstract double logSlope(double kelvin);

  /**
   * Saturation temperature by the Magnus form of the World Meteorological Organization (Guide No.
   * 8), good to 1 K or so: only where a search begins.
   *
   * @param logRatio ln(pressure / 611.2 Pa)
   * @return temperature, °C
   */
  abstract double estimate(double logRatio);

  /**
   * Saturation pressure.
   *
   * @param celsius temperature, °C
   * @return pressure, Pa
   */
  double pressure(double celsius) {
    return Math.exp(logPressure(celsius + ZERO_CELSIUS));
  }

  /**
   * Temperature at which this phase has the given saturation pressure.
   *
   * @param pressure pressure, Pa, above 0
   * @return temperature, °C
   */
  double temperature(double pressure) {
    double log = Math.log(pressure);
    double celsius = estimate(log - Math.log(ESTIMATE_FROM));
    for (int i = 0; i < MOST_STEPS; i++) {
      double kelvin = celsius + ZERO_CELSIUS;
      double step = (logPressure(kelvin) - log) / logSlope(kelvin);
      celsius -= step;
      if (Math.abs(step) < LAST_STEP) {
        return celsius;
      }
    }
    throw new IllegalStateException("no saturation temperature found for " + pressure + " Pa");
  }

  /**
   * The phase in balance with vapour at a temperature.
   *
   * @param celsius temperature, °C
   * @return ice at and below the triple point, else water
   */
  static Phase at(double celsius) {
    return celsius <= TRIPLE_POINT ? ICE : WATER;
  }
}
