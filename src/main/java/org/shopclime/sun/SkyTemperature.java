package org.shopclime.sun;

/**
 * Temperature of a black sky that sends down as much heat as the real one.
 *
 * <p>Error: the two published relations lie some 4 K apart on a year's mean, more on the coldest
 * clear nights; neither knows the day's own layers of air.
 */
public final class SkyTemperature {

  private static final double KELVIN = 273.15;

  private SkyTemperature() {}

  /**
   * Sky temperature from the dew point, and cloud.
   *
   * <p>Source: G. Clark and C. Allen, The estimation of atmospheric radiation for clear and cloudy
   * skies (1978), for the clear sky; G. N. Walton, Thermal Analysis Research Program reference
   * manual, NBSIR 83-2655 (1983), for the cloud factor. A sky emits no more than a black body:
   * where the product passes 1 (overcast with a dew point near 30 °C) it is 1.
   *
   * @param dryBulb air temperature, °C, -70 to 60
   * @param dewPoint dew point, °C, -80 to 40
   * @param opaqueCloudTenths opaque cloud, tenths of the sky, 0 to 10
   * @return sky temperature, °C, not above the air
   * @throws IllegalArgumentException if a figure is outside its range
   */
  public static double clarkAllen(double dryBulb, double dewPoint, double opaqueCloudTenths) {
    double n = check(dryBulb, dewPoint, opaqueCloudTenths);
    double clear = 0.787 + 0.764 * Math.log((dewPoint + KELVIN) / 273);
    double cloud = 1 + 0.0224 * n - 0.0035 * n * n + 0.00028 * n * n * n;
    return ofEmissivity(dryBulb, Math.min(1, clear * cloud));
  }

  /**
   * Sky temperature from dew point, hour, pressure and the height of the cloud; no thin cloud.
   *
   * @param dryBulb air temperature, °C, -70 to 60
   * @param dewPoint dew point, °C, -80 to 40
   * @param hourOfDay hours after local midnight, 0 to 24
   * @param pressurePa air pressure, Pa, 30000 to 110000
   * @param opaqueCloudTenths opaque cloud, tenths of the sky, 0 to 10
   * @param cloudBaseM height of the opaque cloud above the ground, m, 0 to 30000; 2000 where
   *     unknown is common practice
   * @return sky temperature, °C
   * @throws IllegalArgumentException if a figure is outside its range
   */
  public static double martinBerdahl(
      double dryBulb,
      double dewPoint,
      double hourOfDay,
      double pressurePa,
      double opaqueCloudTenths,
      double cloudBaseM) {
    return martinBerdahl(
        dryBulb, dewPoint, hourOfDay, pressurePa, opaqueCloudTenths, 0, cloudBaseM);
  }

  /**
   * Sky temperature from dew point, hour, pressure, opaque and thin cloud.
   *
   * <p>Source: M. Martin and P. Berdahl, Characteristics of infrared sky radiation in the United
   * States, Solar Energy 33(3/4), 1984. Opaque cloud counts as black at its own, lower,
   * temperature; thin cloud as a high veil of emissivity 0.4 at 8 km (from memory).
   *
   * @param dryBulb air temperature, °C, -70 to 60
   * @param dewPoint dew point, °C, -80 to 40
   * @param hourOfDay hours after local midnight, 0 to 24
   * @param pressurePa air pressure, Pa, 30000 to 110000
   * @param opaqueCloudTenths opaque cloud, tenths of the sky, 0 to 10
   * @param thinCloudTenths total less opaque cloud, tenths of the sky, 0 to 10 less the opaque
   * @param cloudBaseM height of the opaque cloud above the ground, m, 0 to 30000; 2000 where
   *     unknown is common practice
   * @return sky temperature, °C
   * @throws IllegalArgumentException if a figure is outside its range
   */
  public static double martinBerdahl(
      double dryBulb,
      double dewPoint,
      double hourOfDay,
      double pressurePa,
      double opaqueCloudTenths,
      double thinCloudTenths,
      double cloudBaseM) {
    double n = check(dryBulb, dewPoint, opaqueCloudTenths);
    Range.check("thin cloud, tenths", thinCloudTenths, 0, 10 - n);
    Range.check("hour of day", hourOfDay, 0, 24);
    Range.check("pressure, Pa", pressurePa, 30_000, 110_000);
    Range.check("cloud base, m", cloudBaseM, 0, 30_000);
    double dew = dewPoint / 100;
    double clear =
        0.711
            + 0.56 * dew
            + 0.73 * dew * dew
            + 0.013 * Math.cos(2 * Math.PI * hourOfDay / 24)
            + 0.00012 * (pressurePa / 100 - 1000);
    double cloud =
        n / 10 * Math.exp(-cloudBaseM / 8200)
            + 0.4 * thinCloudTenths / 10 * Math.exp(-8000 / 8200.0);
    return ofEmissivity(dryBulb, clear + (1 - clear) * cloud);
  }

  private static double check(double dryBulb, double dewPoint, double opaqueCloudTenths) {
    Range.check("dry bulb, °C", dryBulb, -70, 60);
    Range.check("dew point, °C", dewPoint, -80, 40);
    return Range.check("opaque cloud, tenths", opaqueCloudTenths, 0, 10);
  }

  private static double ofEmissivity(double dryBulb, double emissivity) {
    return (dryBulb + KELVIN) * Math.pow(emissivity, 0.25) - KELVIN;
  }
}
