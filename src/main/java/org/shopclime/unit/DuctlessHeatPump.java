package org.shopclime.unit;

import org.shopclime.air.AirState;
import org.shopclime.quantity.Units;

/**
 * A ductless heat pump: an indoor head, an outdoor unit, one speed or variable.
 *
 * <p>Cooling follows the published set of residential air conditioners ({@link
 * CurveSet#residentialSingleSpeed}) with the coil of {@link RoomUnit}; heating the published set of
 * heat pumps, less frost. Both are made to give exactly their label in the rated state, at full
 * speed. Ratings are net: the heat of the indoor fan is inside. Whoever rates a variable unit at
 * less than full speed tells it here with the capacity at full speed.
 *
 * <p>Left out: crankcase heat and standby, heat kept by the refrigerant lines, snow.
 */
public final class DuctlessHeatPump {

  /** Lowest outdoor temperature a usual unit heats at, °C; common practice. */
  public static final double USUAL_LOWEST_OUTDOOR = -15;

  /** State in which heating is rated: air of the room, °C (70 °F). */
  public static final double RATED_ROOM = Units.celsius(70);

  /** State in which heating is rated: outdoor dry bulb, °C (47 °F). */
  public static final double RATED_OUTDOOR = Units.celsius(47);

  /** Outdoor dry bulb of the second heating label, °C (17 °F). */
  public static final double COLD_OUTDOOR = Units.celsius(17);

  private final RoomUnit unit;
  private final Rating heating;
  private final Cold cold;
  private final Compressor compressor;
  private final double lowestOutdoor;
  private final double backUp;
  private final Cycling cycling;

  private DuctlessHeatPump(
      RoomUnit unit,
      Rating heating,
      Cold cold,
      Compressor compressor,
      double lowestOutdoor,
      double backUp,
      Cycling cycling) {
    new Range(-60, 20).require("lowest outdoor temperature", lowestOutdoor, "°C");
    Figures.requireNotNegative("back-up heater", backUp, "W");
    this.unit = unit;
    this.heating = heating;
    this.cold = cold;
    this.compressor = compressor;
    this.lowestOutdoor = lowestOutdoor;
    this.backUp = backUp;
    this.cycling = cycling;
  }

  /**
   * A usual unit without back-up heater.
   *
   * @param cooling at the rating point, 80 and 67 °F indoors, 95 °F outdoors
   * @param heating at 70 °F indoors and 47 °F outdoors
   * @param compressor one speed or variable
   * @return the unit
   */
  public static DuctlessHeatPump usual(Rating cooling, Rating heating, Compressor compressor) {
    return new DuctlessHeatPump(
        RoomUnit.ofLabel(
            cooling,
            RatingPoint.OUTDOOR_DRY_BULB,
            cooling.capacity() * RoomUnit.USUAL_AIRFLOW_PER_WATT,
            RoomUnit.USUAL_SENSIBLE_HEAT_RATIO,
            CurveSet.residentialSingleSpeed()),
        heating,
        new Cold(1, 1),
        compressor,
        USUAL_LOWEST_OUTDOOR,
        0,
        Cycling.usual());
  }

  /**
   * The same unit made for another cold.
   *
   * @param celsius lowest outdoor temperature at which it heats, °C, -60 to 20
   * @return the unit
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public DuctlessHeatPump withLowestOutdoor(double celsius) {
    return new DuctlessHeatPump(unit, heating, cold, compressor, celsius, backUp, cycling);
  }

  /**
   * The same unit with a resistance heater that comes on when the compressor cannot carry the load.
   *
   * @param watts W, 0 or more
   * @return the unit
   * @throws IllegalArgumentException if negative, infinite or NaN
   */
  public DuctlessHeatPump withBackUp(double watts) {
    return new DuctlessHeatPump(unit, heating, cold, compressor, lowestOutdoor, watts, cycling);
  }

  /**
   * The same unit with a dusty indoor coil. It is felt in cooling only: how heating answers is not
   * known.
   *
   * @param fraction part of the clean indoor airflow, 0.3 to 1
   * @return the unit
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public DuctlessHeatPump withAirflowFraction(double fraction) {
    return new DuctlessHeatPump(
        unit.withAirflowFraction(fraction),
        heating,
        cold,
        compressor,
        lowestOutdoor,
        backUp,
        cycling);
  }

  /**
   * The same unit with dust on its indoor coil, see {@link RoomUnit#withDust}; in cooling only.
   *
   * @param dust one end of a band
   * @return the unit
   */
  public DuctlessHeatPump withDust(DustBand.End dust) {
    return new DuctlessHeatPump(
        unit.withDust(dust), heating, cold, compressor, lowestOutdoor, backUp, cycling);
  }

  /**
   * The same unit by its second heating label, which those made for the cold do better in than the
   * published set. The set is moved to give exactly it; the move fades straight to nothing at 47 °F
   * and stays below 17 °F.
   *
   * @param at17 at 70 °F indoors and 17 °F outdoors, full speed
   * @return the unit
   */
  public DuctlessHeatPump withColdRating(Rating at17) {
    double capacity =
        at17.capacity()
            / (heating.capacity()
                * HeatingCurves.capacityRatio(RATED_ROOM, COLD_OUTDOOR)
                / HeatingCurves.capacityRatio(RATED_ROOM, RATED_OUTDOOR));
    double powerPerCapacity =
        heating.cop()
            / at17.cop()
            / (HeatingCurves.powerPerCapacityRatio(RATED_ROOM, COLD_OUTDOOR)
                / HeatingCurves.powerPerCapacityRatio(RATED_ROOM, RATED_OUTDOOR));
    return new DuctlessHeatPump(
        unit,
        heating,
        new Cold(capacity, powerPerCapacity),
        compressor,
        lowestOutdoor,
        backUp,
        cycling);
  }

  /**
   * The same unit running on and off in another way.
   *
   * @param how how it does
   * @return the unit
   */
  public DuctlessHeatPump withCycling(Cycling how) {
    return new DuctlessHeatPump(unit, heating, cold, compressor, lowestOutdoor, backUp, how);
  }

  /**
   * The unit switched to cooling. Demand is the part of the total capacity at full speed.
   *
   * @return the plant
   */
  public RoomPlant cooling() {
    return this::cool;
  }

  /**
   * The unit switched to heating. Demand is the part of what compressor and back-up heater give
   * together; the compressor goes first.
   *
   * @return the plant
   */
  public RoomPlant heating() {
    return this::heat;
  }

  private RoomEffect cool(AirState room, AirState outdoor, double demand) {
    Figures.requireQuestion(room, outdoor, demand);
    double speed = compressor.speed(demand);
    RoomUnit turning =
        speed < 1
            ? unit.atPart(speed, compressor.powerPerCapacity(speed), compressor.airflow(speed))
            : unit;
    return RoomEffect.ofCoil(
        turning.at(outdoor.dryBulb(), room), demand / speed, cycling, unit.ratedLatent(), room);
  }

  private RoomEffect heat(AirState room, AirState outdoor, double demand) {
    Figures.requireQuestion(room, outdoor, demand);
    double indoors = room.dryBulb();
    double outdoors = outdoor.dryBulb();
    boolean runs = outdoors >= lowestOutdoor;
    double able = runs ? capacity(indoors, outdoors) : 0;
    double wanted = demand * (able + backUp);
    double moved = Math.min(wanted, able);
    double resistance = wanted - moved;
    double power = resistance;
    double runFraction = backUp > 0 ? resistance / backUp : 0;
    int bits = Limit.TOO_COLD.bit();
    if (runs) {
      double load = moved / able;
      double speed = compressor.speed(load);
      double running = cycling.runFraction(load / speed);
      power += running * speed * able * powerPerCapacity(indoors, outdoors, speed);
      runFraction = running;
      bits = HeatingCurves.limitBits(indoors, outdoors);
    }
    double heat = moved + resistance;
    return new RoomEffect(
        heat, 0, 0, 0, power, runFraction, new Elsewhere(power - heat, 0, 0, 0), Limit.setOf(bits));
  }

  /** Heating capacity of the compressor at full speed, frost taken off, W. */
  private double capacity(double indoors, double outdoors) {
    return heating.capacity()
        * HeatingCurves.capacityRatio(indoors, outdoors)
        / HeatingCurves.capacityRatio(RATED_ROOM, RATED_OUTDOOR)
        * cold.capacityFactor(outdoors)
        * Defrost.capacityFactor(outdoors);
  }

  /** Power drawn for each watt given at this speed, frost counted. */
  private double powerPerCapacity(double indoors, double outdoors, double speed) {
    return heating.power()
        / heating.capacity()
        * HeatingCurves.powerPerCapacityRatio(indoors, outdoors)
        / HeatingCurves.powerPerCapacityRatio(RATED_ROOM, RATED_OUTDOOR)
        * cold.powerPerCapacityFactor(outdoors)
        * compressor.powerPerCapacity(speed)
        * Defrost.powerFactor(outdoors)
        / Defrost.capacityFactor(outdoors);
  }

  /**
   * How far the second heating label lies off the published set.
   *
   * @param capacity at 17 °F, part of what the set gives
   * @param powerPerCapacity the same of power per capacity
   */
  private record Cold(double capacity, double powerPerCapacity) {

    double capacityFactor(double outdoors) {
      return 1 + (capacity - 1) * way(outdoors);
    }

    double powerPerCapacityFactor(double outdoors) {
      return 1 + (powerPerCapacity - 1) * way(outdoors);
    }

    /** 0 at 47 °F and above, 1 at 17 °F and below. */
    private static double way(double outdoors) {
      return Math.max(0, Math.min(1, (RATED_OUTDOOR - outdoors) / (RATED_OUTDOOR - COLD_OUTDOOR)));
    }
  }
}
