package org.shopclime.envelope;

/**
 * Water vapour through walls: saturation, permeance and the layer of still air that resists as
 * much, critical humidity of surfaces.
 *
 * <p>Source: ISO 13788:2012 (annex E: saturation; clause 4: vapour permeability of air taken as one
 * figure; clause 5: surface factor and critical humidity); ASTM E96 for the perm. Equations from
 * memory of these standards.
 *
 * <p>Error: the saturation of annex E lies within 0.2 % of the one moist air is reckoned with from
 * 0 to 40 °C, and within 0.6 % down to -20 °C; one permeability of air stands for all temperatures
 * and pressures, which is some 10 % either way.
 */
public final class Vapour {

  /** Vapour permeability of still air, kg/(s·m·Pa). */
  public static final double AIR = 2e-10;

  /** kg/(s·m²·Pa) in a US perm, which is one grain an hour through a square foot at 1 inHg. */
  public static final double PERM = perm();

  /**
   * Relative humidity at a surface, mean of a month, from which mould may grow, 1.
   *
   * <p>Source: ISO 13788:2012, 5.2.
   */
  public static final double MOULD = 0.8;

  private static final double AT_ZERO = 610.5;
  private static final double WATER_SLOPE = 17.269;
  private static final double WATER_POLE = 237.3;
  private static final double ICE_SLOPE = 21.875;
  private static final double ICE_POLE = 265.5;

  private static final double COLDEST = -100;
  private static final double HOTTEST = 150;

  private Vapour() {}

  private static double perm() {
    double grain = 0.45359237 / 7000;
    double foot = 12 * InchPound.INCH;
    double inchOfMercury = 13_595.1 * 9.80665 * InchPound.INCH;
    return grain / (3600 * foot * foot * inchOfMercury);
  }

  /**
   * Vapour pressure at saturation, over ice below 0 °C.
   *
   * <p>Source: ISO 13788:2012, equations E.7 and E.8.
   *
   * @param celsius temperature, °C, -100 to 150
   * @return Pa
   * @throws IllegalArgumentException if the temperature is outside its range
   */
  public static double saturation(double celsius) {
    Range.require("temperature, °C,", celsius, COLDEST, HOTTEST);
    return celsius >= 0
        ? AT_ZERO * Math.exp(WATER_SLOPE * celsius / (WATER_POLE + celsius))
        : AT_ZERO * Math.exp(ICE_SLOPE * celsius / (ICE_POLE + celsius));
  }

  /**
   * Temperature at which air of a vapour pressure is saturated: its dew point, below 0 °C its frost
   * point.
   *
   * <p>Source: ISO 13788:2012, equations E.9 and E.10.
   *
   * @param pressure vapour pressure, Pa, 0.001 to 400 000
   * @return °C
   * @throws IllegalArgumentException if the pressure is outside its range
   */
  public static double dewPoint(double pressure) {
    Range.require("vapour pressure, Pa,", pressure, 0.001, 400_000);
    double log = Math.log(pressure / AT_ZERO);
    return log >= 0 ? WATER_POLE * log / (WATER_SLOPE - log) : ICE_POLE * log / (ICE_SLOPE - log);
  }

  /**
   * Thickness of still air that resists vapour as much as a layer of a permeance.
   *
   * @param permeance kg/(s·m²·Pa), above 0
   * @return equivalent air thickness, m
   * @throws IllegalArgumentException if the permeance is 0, negative or NaN
   */
  public static double airThickness(double permeance) {
    return AIR / Range.requireAbove("permeance, kg/(s·m²·Pa),", permeance, 0, 1);
  }

  /**
   * Permeance of a layer that resists vapour as much as still air of a thickness.
   *
   * @param airThickness equivalent air thickness, m, above 0
   * @return kg/(s·m²·Pa)
   * @throws IllegalArgumentException if the thickness is 0, negative or NaN
   */
  public static double permeance(double airThickness) {
    return AIR / Range.requireAbove("equivalent air thickness, m,", airThickness, 0, 1e9);
  }

  /**
   * Permeance of a layer.
   *
   * @param permeability vapour permeability of its material, kg/(s·m·Pa), above 0
   * @param thickness its thickness, m, above 0
   * @return kg/(s·m²·Pa)
   * @throws IllegalArgumentException if a figure is 0, negative or NaN
   */
  public static double permeance(double permeability, double thickness) {
    return Range.requireAbove("permeability, kg/(s·m·Pa),", permeability, 0, 1)
        / Range.requireAbove("thickness, m,", thickness, 0, 100);
  }

  /**
   * Vapour that passes a layer.
   *
   * @param permeance kg/(s·m²·Pa), 0 or more
   * @param difference difference of vapour pressure across it, Pa
   * @return kg/(s·m²), in the direction of falling pressure
   */
  public static double flow(double permeance, double difference) {
    return permeance * difference;
  }

  /**
   * How well a face is kept warm: 0 as cold as outdoors, 1 as warm as the room.
   *
   * @param surface temperature of the inner face, °C
   * @param outdoor temperature of outdoor air, °C
   * @param indoor temperature of indoor air, °C, other than outdoors
   * @return temperature factor of the surface, 1
   * @throws IllegalArgumentException if indoors and outdoors are alike
   */
  public static double surfaceFactor(double surface, double outdoor, double indoor) {
    if (indoor == outdoor) {
      throw new IllegalArgumentException(
          "indoor and outdoor temperature are both " + indoor + " °C; takes two that differ");
    }
    return (surface - outdoor) / (indoor - outdoor);
  }

  /**
   * Temperature at which a surface has a certain humidity.
   *
   * @param pressure vapour pressure of the air before it, Pa
   * @param humidity relative humidity at the surface, above 0 to 1: {@link #MOULD}, or 1 for dew
   * @return °C
   * @throws IllegalArgumentException if a figure is outside its range
   */
  public static double surfaceTemperature(double pressure, double humidity) {
    return dewPoint(pressure / Range.requireAbove("humidity at the surface", humidity, 0, 1));
  }
}
