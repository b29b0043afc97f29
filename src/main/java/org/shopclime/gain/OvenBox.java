package org.shopclime.gain;

import org.shopclime.quantity.Range;

/**
 * A curing oven: an insulated box held hot by electric heaters, its steel parts cooling in the
 * room.
 *
 * <p>Heat given off in the mean of an hour while hot: through the shell, U A (T - room) on the
 * inside area, with a film on each face; by the parts, carried out at T and cooled to the room, m c
 * (T - room). If the heater cannot give both, the oven stays below its set point at the temperature
 * where it can: {@link #reaches(double)} tells. If the room is hotter than the set point, the
 * heater is off and the oven gives nothing.
 *
 * <p>Source: steady conduction through plane walls. Film in the room 0.12 m²·K/W: ASHRAE
 * Fundamentals, still air at a vertical face. Film inside 0.04 m²·K/W: radiation 4 ε σ T³ at 200 °C
 * and ε 0.9 (22 W/(m²·K)) with 3 W/(m²·K) of convection; behind R-8 the two make a tenth of the
 * whole. Steel 490 J/(kg·K): mean of EN 1993-1-2, 3.4.1.2, between 20 and 200 °C. Radiant share
 * 0.32: ASHRAE Fundamentals (1981 to 1997), part of the input of electric cooking ovens that a full
 * hood leaves in the room; a painted skin can radiate up to 0.6.
 *
 * <p>Limits: steel ribs through the wall, a leaky door and opening it hot are left out; a
 * home-built box may lose half as much again. Heating up is not told apart: what the box stores it
 * gives back later. Gas-fired ovens are not told: their flue and burner water are missing.
 *
 * @param width inside width, m, 0.1 to 10
 * @param depth inside depth, m, 0.1 to 10
 * @param height inside height, m, 0.1 to 10
 * @param wallResistance resistance of its walls without films, m²·K/W, 0.05 to 10
 * @param setTemperature temperature it is held at, °C, 40 to 500
 * @param heaterWatts heater power, W, 1 to 1e6
 * @param partsMassPerHour steel cured in an hour, kg/h, 0 to 10,000
 */
public record OvenBox(
    double width,
    double depth,
    double height,
    double wallResistance,
    double setTemperature,
    double heaterWatts,
    double partsMassPerHour) {

  /** Specific heat of carbon steel, mean of 20 to 200 °C, J/(kg·K). */
  public static final double STEEL_SPECIFIC_HEAT = 490;

  /** Radiant part of what it gives off, 0 to 1. */
  public static final double RADIANT_SHARE = 0.32;

  private static final double FILM_INSIDE = 0.04;
  private static final double FILM_IN_ROOM = 0.12;

  /** Refuses what is outside the ranges above. */
  public OvenBox {
    Range.check("oven width, m,", width, 0.1, 10);
    Range.check("oven depth, m,", depth, 0.1, 10);
    Range.check("oven height, m,", height, 0.1, 10);
    Range.check("oven wall resistance, m²·K/W,", wallResistance, 0.05, 10);
    Range.check("oven temperature, °C,", setTemperature, 40, 500);
    Range.check("heater power, W,", heaterWatts, 1, 1e6);
    Range.check("parts an hour, kg,", partsMassPerHour, 0, 1e4);
  }

  /**
   * Inside area of all six walls.
   *
   * @return m²
   */
  public double area() {
    return 2 * (width * depth + width * height + depth * height);
  }

  /**
   * Heater power that set point and parts ask for.
   *
   * @param roomCelsius air temperature of the room, °C, -60 to 100
   * @return mean power, W; 0 in a room hotter than the set point
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public double demand(double roomCelsius) {
    Range.check("room temperature, °C,", roomCelsius, -60, 100);
    return Math.max(0, (shell() + parts()) * (setTemperature - roomCelsius));
  }

  /**
   * Whether the heater can hold the set point while parts go through.
   *
   * @param roomCelsius air temperature of the room, °C, -60 to 100
   * @return true if the heater gives what is asked for
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public boolean reaches(double roomCelsius) {
    return demand(roomCelsius) <= heaterWatts;
  }

  /**
   * Mean electric power: what is asked for, at most what the heater gives.
   *
   * @param roomCelsius air temperature of the room, °C, -60 to 100
   * @return W
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public double input(double roomCelsius) {
    return Math.min(demand(roomCelsius), heaterWatts);
  }

  /**
   * Temperature it holds: the set point, or less where the heater falls short; in a room hotter
   * than the set point, that of the room.
   *
   * @param roomCelsius air temperature of the room, °C, -60 to 100
   * @return °C
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public double heldTemperature(double roomCelsius) {
    return roomCelsius + input(roomCelsius) / (shell() + parts());
  }

  /**
   * Heat through the shell.
   *
   * @param roomCelsius air temperature of the room, °C, -60 to 100
   * @return W
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public double shellLoss(double roomCelsius) {
    return shell() * (heldTemperature(roomCelsius) - roomCelsius);
  }

  /**
   * Heat of the parts that cool in the room.
   *
   * @param roomCelsius air temperature of the room, °C, -60 to 100
   * @return mean of the hour, W
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public double partsHeat(double roomCelsius) {
    return parts() * (heldTemperature(roomCelsius) - roomCelsius);
  }

  /**
   * Heat that stays in the room. A hood takes warm air only, so radiant heat always stays, as for
   * hooded appliances in ASHRAE Fundamentals.
   *
   * @param roomCelsius air temperature of the room, °C, -60 to 100
   * @param exhaustFraction part of the warm air from box and parts that a hood takes outdoors, 0 to
   *     1
   * @return mean heat while hot
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public HeatGain inRoom(double roomCelsius, double exhaustFraction) {
    Range.check("part taken by the hood", exhaustFraction, 0, 1);
    HeatGain given = HeatGain.dry(input(roomCelsius), RADIANT_SHARE);
    return new HeatGain(given.convective() * (1 - exhaustFraction), given.radiant(), 0);
  }

  /** Conductance of the shell, W/K. */
  double shell() {
    return area() / (FILM_INSIDE + wallResistance + FILM_IN_ROOM);
  }

  /** Heat carried by the parts for each kelvin, W/K. */
  private double parts() {
    return partsMassPerHour * STEEL_SPECIFIC_HEAT / 3600;
  }
}
