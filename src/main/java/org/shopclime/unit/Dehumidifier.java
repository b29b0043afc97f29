package org.shopclime.unit;

import org.shopclime.air.AirState;
import org.shopclime.air.MoistAir;
import org.shopclime.quantity.Units;

/**
 * A portable dehumidifier: takes water out of the room and gives it the heat of that water's
 * condensing, and all the power it draws.
 *
 * <p>Source: rated at 65 °F and 60 % relative humidity, 10 CFR 430 subpart B appendix X1; generic
 * curves of water and of litres for each kilowatt-hour against room temperature and humidity,
 * NREL/TP-5500-52791 (2011), laboratory tests of six units, and its loss by cycling (a degradation
 * of 0.1); all from memory. The curves are 1 within 0.016 at 80 °F and 60 %, where units were rated
 * before; between the two states they fall to 0.66, as labels did (70 pints became 50, 50 became
 * 35).
 *
 * <p>The range held, 60 to 90 °F and 40 to 80 %, is from memory. Colder or drier the curve of water
 * is followed down to nothing, power stays at the edge; warmer or damper the edge is held. The
 * integrated energy factor on labels has standby in it; it is taken as that of running, which reads
 * power a little high.
 */
public final class Dehumidifier implements RoomPlant {

  /** Coldest room a usual unit dries, °C (41 °F): below, its coil ices; common practice. */
  public static final double USUAL_LOWEST_ROOM = 5;

  /** Room in which it is rated: dry bulb, °C (65 °F). */
  public static final double RATED_ROOM = Units.celsius(65);

  /** Room in which it is rated: relative humidity, 1. */
  public static final double RATED_HUMIDITY = 0.60;

  private static final double SECONDS_PER_DAY = 86_400;
  private static final double DEGRADATION = 0.1;
  private static final Range ROOM = Range.ofFahrenheit(60, 90);
  private static final Range PERCENT = new Range(40, 80);

  /** Water taken out, by °C and %. */
  private static final Biquadratic WATER =
      new Biquadratic(
          -1.162525707, 0.02271469, -0.000113208, 0.021110538, -0.0000693034, 0.000378843);

  /** Litres for each kilowatt-hour, by °C and %. */
  private static final Biquadratic FACTOR =
      new Biquadratic(
          -1.902154518, 0.063466565, -0.000622839, 0.039540407, -0.000125637, -0.000176722);

  private static final double WATER_AT_RATING = WATER.at(RATED_ROOM, 100 * RATED_HUMIDITY);
  private static final double FACTOR_AT_RATING = FACTOR.at(RATED_ROOM, 100 * RATED_HUMIDITY);

  private final double ratedWater;
  private final double ratedPower;
  private final double lowestRoom;

  private Dehumidifier(double ratedWater, double ratedPower, double lowestRoom) {
    new Range(-20, 30).require("lowest room temperature", lowestRoom, "°C");
    this.ratedWater = ratedWater;
    this.ratedPower = ratedPower;
    this.lowestRoom = lowestRoom;
  }

  /**
   * A usual unit by its label, a litre taken as a kilogram.
   *
   * @param litresPerDay water taken out at 65 °F and 60 %, L/day, above 0
   * @param litresPerKilowattHour integrated energy factor, L/kWh, above 0
   * @return the unit
   * @throws IllegalArgumentException if an argument is not above 0, infinite or NaN
   */
  public static Dehumidifier ofLabel(double litresPerDay, double litresPerKilowattHour) {
    Figures.requirePositive("capacity", litresPerDay, "L/day");
    Figures.requirePositive("energy factor", litresPerKilowattHour, "L/kWh");
    double water = litresPerDay / SECONDS_PER_DAY;
    return new Dehumidifier(
        water, water / litresPerKilowattHour * Units.JOULES_PER_KWH, USUAL_LOWEST_ROOM);
  }

  /**
   * The same unit made for another cold.
   *
   * @param celsius coldest room it dries, °C, -20 to 30
   * @return the unit
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public Dehumidifier withLowestRoom(double celsius) {
    return new Dehumidifier(ratedWater, ratedPower, celsius);
  }

  /**
   * {@inheritDoc}
   *
   * <p>Demand is the part of the water it takes out running without pause. The water stands in the
   * room, or drains, at room temperature. In a room too cold it stays off, marked {@link
   * Limit#TOO_COLD}.
   */
  @Override
  public RoomEffect at(AirState room, AirState outdoor, double demand) {
    Figures.requireQuestion(room, outdoor, demand);
    double t = room.dryBulb();
    if (t < lowestRoom) {
      return RoomEffect.heatOfPower(0, 0, Limit.TOO_COLD.bit());
    }
    double percent = 100 * room.relativeHumidity();
    double water = demand * ratedWater * waterRatio(t, percent);
    double run = PartLoad.powerFraction(demand, DEGRADATION);
    double power = run * ratedPower * powerRatio(t, percent);
    double liquid = water * MoistAir.SPECIFIC_HEAT_WATER * t;
    return new RoomEffect(
        power + water * Saturation.vapourEnthalpy(t) - liquid,
        -water,
        0,
        0,
        power,
        run,
        new Elsewhere(0, 0, water, liquid),
        Limit.setOf(
            ROOM.bits(t, Limit.ROOM_LOW, Limit.ROOM_HIGH)
                | PERCENT.bits(percent, Limit.HUMIDITY_LOW, Limit.HUMIDITY_HIGH)));
  }

  private static double waterRatio(double t, double percent) {
    return Math.max(
        0, WATER.at(Math.min(t, ROOM.high()), Math.min(percent, PERCENT.high())) / WATER_AT_RATING);
  }

  private static double powerRatio(double t, double percent) {
    double heldT = ROOM.nearest(t);
    double heldPercent = PERCENT.nearest(percent);
    return WATER.at(heldT, heldPercent)
        / WATER_AT_RATING
        / (FACTOR.at(heldT, heldPercent) / FACTOR_AT_RATING);
  }
}
