package org.shopclime.leakage;

import org.shopclime.quantity.Range;

/**
 * Air through vents of an attic or a closet: in at one opening, out at another that is higher or on
 * the other side.
 *
 * <p>Source: ASHRAE Handbook - Fundamentals, ventilation and infiltration chapter, natural
 * ventilation. Stack: Q = Cd A √(2 g h ΔT / T), T the warmer air, A = A₁A₂ / √(A₁² + A₂²) for two
 * openings in series, Cd 0.65 where the flow keeps one direction. Wind: Q = Cv A U.
 *
 * <p>Error: about 10 % for clean openings with known free area; wind effectiveness is known to
 * half.
 *
 * <p>Limits: free area, after screens and louvres (a louvre leaves about half, common practice).
 * Air inside equally warm from bottom to top. A single opening has no flow here: see {@link
 * DoorExchange}.
 *
 * @param lowerArea free area of the lower (or windward) openings, m², 0 to 1000
 * @param upperArea free area of the upper (or lee) openings, m², 0 to 1000
 * @param height between the middles of lower and upper openings, m, 0 to 100
 */
public record VentStack(double lowerArea, double upperArea, double height) {

  /** Discharge coefficient of an opening with flow in one direction. */
  public static final double DISCHARGE = 0.65;

  /** Wind effectiveness, wind straight at the openings: middle of 0.5 to 0.6. */
  public static final double WIND_STRAIGHT = 0.55;

  /** Wind effectiveness, wind at a slant: middle of 0.25 to 0.35. */
  public static final double WIND_SLANTED = 0.30;

  private static final double GRAVITY = 9.80665;
  private static final double KELVIN = 273.15;

  /** Refuses what is outside the ranges above. */
  public VentStack {
    Range.check("lower vent area, m²,", lowerArea, 0, 1000);
    Range.check("upper vent area, m²,", upperArea, 0, 1000);
    Range.check("height between vents, m,", height, 0, 100);
  }

  /**
   * Area of one opening that alone would let as much through.
   *
   * @return m²; never more than the smaller opening, 0 where one is missing
   */
  public double effectiveArea() {
    double both = Math.hypot(lowerArea, upperArea);
    return both == 0 ? 0 : lowerArea * upperArea / both;
  }

  /**
   * Flow by stack, up where it is warmer inside, down where it is colder.
   *
   * @param insideCelsius air inside, °C, -60 to 150
   * @param outsideCelsius air where the vents lead, °C, -60 to 150
   * @return m³/s, 0 or more, of the warmer air
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public double stackFlow(double insideCelsius, double outsideCelsius) {
    Range.check("temperature inside, °C,", insideCelsius, -60, 150);
    Range.check("temperature outside, °C,", outsideCelsius, -60, 150);
    double warmer = Math.max(insideCelsius, outsideCelsius) + KELVIN;
    double drive = 2 * GRAVITY * height * Math.abs(insideCelsius - outsideCelsius) / warmer;
    return DISCHARGE * effectiveArea() * Math.sqrt(drive);
  }

  /**
   * Flow by wind from one side to the other: Cv A U. The handbook's A is that of equal inlets and
   * outlets, whose effective area is A / √2; unequal openings are counted by that.
   *
   * @param wind speed at the openings, m/s, 0 to 100
   * @param effectiveness Cv, 0 to 1: {@link #WIND_STRAIGHT}, {@link #WIND_SLANTED}
   * @return m³/s
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public double windFlow(double wind, double effectiveness) {
    Range.check("wind, m/s,", wind, 0, 100);
    Range.check("wind effectiveness", effectiveness, 0, 1);
    return effectiveness * Math.sqrt(2) * effectiveArea() * wind;
  }

  /**
   * Stack and wind together: the root of the sum of squares, as pressures add.
   *
   * @param stackFlow m³/s, 0 to 1000
   * @param windFlow m³/s, 0 to 1000
   * @return m³/s
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static double together(double stackFlow, double windFlow) {
    return Math.hypot(
        Range.check("stack flow, m³/s,", stackFlow, 0, 1000),
        Range.check("wind flow, m³/s,", windFlow, 0, 1000));
  }
}
