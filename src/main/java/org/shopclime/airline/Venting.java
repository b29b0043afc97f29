package org.shopclime.airline;

import org.shopclime.air.AirState;
import org.shopclime.leakage.VentStack;

/**
 * How air passes through a place: from where, to where, by its own warmth or by a fan.
 *
 * <p>Source: stack flow by {@link VentStack}, driven by the difference to the air where the upper
 * opening leads; colder inside than there, it turns round. A fan moves its volume of the air it
 * draws, always forwards.
 *
 * <p>Limits: no wind; a fan's flow is that in place, about half of what is printed on it. Where air
 * goes from room to outdoors, the room takes as much outdoor air by its leaks.
 *
 * @param from where the lower opening leads
 * @param to where the upper opening leads
 * @param openings free areas and the height between them; areas of 0 for a closed place
 * @param fan flow of a fan, m³/s, 0 (none) to 10
 */
public record Venting(Side from, Side to, VentStack openings, double fan) {

  /** Nothing passes. */
  public static final Venting CLOSED = new Venting(Side.ROOM, Side.ROOM, new VentStack(0, 0, 0), 0);

  private static final double HOTTEST = 120;

  /** Refuses what is outside the ranges above. */
  public Venting {
    Check.within("flow of a fan, m³/s,", fan, 0, 10);
  }

  /**
   * Two openings and no fan.
   *
   * @param from where the lower opening leads
   * @param to where the upper opening leads
   * @param area free area of each, m², 0 to 1000
   * @param height between their middles, m, 0 to 100
   * @return such a way
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static Venting openings(Side from, Side to, double area, double height) {
    return new Venting(from, to, new VentStack(area, area, height), 0);
  }

  /**
   * A fan.
   *
   * @param from where it draws
   * @param to where it blows
   * @param flow m³/s, 0 to 10
   * @return such a way
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public static Venting fan(Side from, Side to, double flow) {
    return new Venting(from, to, new VentStack(0, 0, 0), flow);
  }

  /**
   * Air that passes a place of a temperature.
   *
   * @param celsius air in the place, °C, -60 to 1e4; above 120 °C the flow is that of 120 °C
   * @param around air on both sides
   * @return how much, and which way
   */
  public Draught draught(double celsius, PlaceAround around) {
    if (fan > 0) {
      return new Draught(from, to, fan * around.at(from).dryAirDensity());
    }
    AirState above = around.at(to);
    double inside = Math.min(celsius, HOTTEST);
    double volume = openings.stackFlow(inside, above.dryBulb());
    boolean forwards = inside >= above.dryBulb();
    AirState source = around.at(forwards ? from : to);
    double warmer = Math.max(inside, above.dryBulb());
    return new Draught(
        forwards ? from : to,
        forwards ? to : from,
        volume * source.withDryBulb(warmer).dryAirDensity());
  }

  /**
   * Air that passes.
   *
   * @param from side it comes from
   * @param to side it goes to
   * @param dryAir kg/s, 0 or more
   */
  public record Draught(Side from, Side to, double dryAir) {

    /**
     * Outdoor air that the room gets in exchange for its own, by this draught.
     *
     * @return kg/s of dry air
     */
    public double outdoorAirIntoRoom() {
      return from == to ? 0 : dryAir;
    }
  }
}
