package org.shopclime.leakage;

import org.shopclime.quantity.Range;

/**
 * Air that changes places between two rooms through an opening that stands open, because it is
 * warmer on one side: as much goes one way as the other.
 *
 * <p>Source: an upright opening after Brown and Solvason, Int. J. Heat Mass Transfer 5 (1962) 859,
 * natural convection through rectangular openings in partitions, 1: vertical partitions; a flat one
 * after Epstein, J. Heat Transfer 110 (1988) 885, buoyancy-driven exchange flow through small
 * openings in horizontal partitions. Both from memory; {@code RoomExchangeTest} holds the second
 * against the limits that its author names and against the heat that Brown measured (Int. J. Heat
 * Mass Transfer 5 (1962) 869, 2: horizontal partitions).
 *
 * <p>Error: {@value #DISCHARGE} is the middle of what was found for doorways, 0.45 to 0.8 (from
 * memory); {@link DoorExchange}, which counts what mixes in the doorway, comes to 0.45. A flat
 * opening a fifth either way.
 *
 * <p>Limits: each room one temperature, still air, no wind through, nobody who walks through.
 * Moisture does not count in the weight of the air: 5 g/kg more make it as light as 0.9 K. Through
 * a flat opening with the warmer air above nothing passes, as the light air stays on top; a fan, a
 * draught or somebody on the stair stirs some across all the same, which is left out. The steps in
 * a flat opening are taken not to stand in the way.
 */
public final class RoomExchange {

  /** Flow through a doorway over what falls freely through it (from memory). */
  public static final double DISCHARGE = 0.65;

  private static final double GRAVITY = 9.80665;
  private static final double KELVIN = 273.15;
  private static final double COLDEST = -100;
  private static final double HOTTEST = 400;

  private RoomExchange() {}

  /**
   * Air that goes each way through a doorway: C / 3 · W H √(g H ΔT / T).
   *
   * @param width of the opening, m, 0.05 to 200
   * @param height of the opening, m, 0.05 to 200
   * @param one air on one side, °C, -100 to 400
   * @param other air on the other side, °C, -100 to 400
   * @return m³/s at the mean temperature; 0 where both are the same
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static double doorway(double width, double height, double one, double other) {
    Range.check("height of a doorway, m,", height, 0.05, 200);
    Range.check("width of a doorway, m,", width, 0.05, 200);
    return DISCHARGE
        / 3
        * width
        * height
        * Math.sqrt(pull(Math.abs(one - other), one, other) * height);
  }

  /**
   * Air that goes each way through a flat opening in a floor, with cold air above warm: Q / √(D⁵ g
   * ΔT / T) = 0.055 (1 + 400 x³)^(1/6) / (1 + 0.00527 (1 + 400 x³)^(1/2) (x⁶ + 117
   * x²)^(3/4))^(1/3), x = L / D, where D is the diameter of a round opening as large.
   *
   * @param area of the opening, m², 0.001 to 40,000
   * @param depth L, thickness of the floor or height of the shaft, m, 0 to 30
   * @param above air above it, °C, -100 to 400
   * @param below air below it, °C, -100 to 400
   * @return m³/s at the mean temperature; 0 where the air above is no colder
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static double floorOpening(double area, double depth, double above, double below) {
    Range.check("area of a floor opening, m²,", area, 0.001, 40_000);
    Range.check("depth of a floor opening, m,", depth, 0, 30);
    double pull = pull(Math.max(0, below - above), above, below);
    double diameter = Math.sqrt(4 * area / Math.PI);
    double slender = depth / diameter;
    double rises = 1 + 400 * slender * slender * slender;
    double squared = slender * slender;
    double mixes = Math.pow(squared * squared * squared + 117 * squared, 0.75);
    double part =
        0.055 * Math.pow(rises, 1.0 / 6) / Math.cbrt(1 + 0.00527 * Math.sqrt(rises) * mixes);
    return part * diameter * diameter * Math.sqrt(diameter * pull);
  }

  /** g ΔT / T, m/s². */
  private static double pull(double difference, double one, double other) {
    Range.check("air on one side, °C,", one, COLDEST, HOTTEST);
    Range.check("air on the other side, °C,", other, COLDEST, HOTTEST);
    return GRAVITY * difference / ((one + other) / 2 + KELVIN);
  }
}
