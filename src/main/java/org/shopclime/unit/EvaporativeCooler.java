package org.shopclime.unit;

import org.shopclime.air.AirState;
import org.shopclime.air.MoistAir;

/**
 * A direct evaporative cooler: outdoor air through wet pads into the room, as much room air out
 * through an open window or door.
 *
 * <p>The air leaves the pads on the line of constant wet bulb, cooled by the saturation
 * effectiveness times the wet-bulb depression, and takes up the heat of the blower behind them. It
 * cools only where that supply air is cooler than the room, and makes the room as damp as the
 * supply; {@link #supply} shows both, and the caller judges.
 *
 * <p>Source: saturation effectiveness as in ASHRAE Handbook - HVAC Systems and Equipment,
 * evaporative air-cooling equipment; a usual 0.8 is common practice (0.7 for worn thin pads, 0.9
 * for deep new ones). Water is fed at the wet bulb, where the sump settles.
 *
 * @param airflow outdoor air drawn in, m³/s, above 0
 * @param fanPower power of blower and pump, W, above 0
 * @param effectiveness part of the wet-bulb depression gained, above 0, to 1
 * @param bleed water let go to keep the pads free of scale, part of what evaporates, 0 or more
 */
public record EvaporativeCooler(double airflow, double fanPower, double effectiveness, double bleed)
    implements RoomPlant {

  /** Usual saturation effectiveness, 1; common practice. */
  public static final double USUAL_EFFECTIVENESS = 0.8;

  /** Usual bleed, part of what evaporates, 1; common practice, more where water is hard. */
  public static final double USUAL_BLEED = 0.2;

  /** Lowest outdoor wet bulb it is run in, °C: below, the pads freeze. */
  private static final double FREEZING = 0;

  /** Checks the ranges. */
  public EvaporativeCooler {
    Figures.requirePositive("airflow", airflow, "m³/s");
    Figures.requirePositive("fan power", fanPower, "W");
    if (!(effectiveness > 0 && effectiveness <= 1)) {
      throw new IllegalArgumentException(
          "saturation effectiveness " + effectiveness + " is not above 0, to 1");
    }
    Figures.requireNotNegative("bleed", bleed, "of what evaporates");
  }

  /**
   * A usual cooler.
   *
   * @param airflow outdoor air drawn in, m³/s, above 0
   * @param fanPower power of blower and pump, W, above 0
   * @return the cooler
   * @throws IllegalArgumentException if an argument is not above 0, infinite or NaN
   */
  public static EvaporativeCooler usual(double airflow, double fanPower) {
    return new EvaporativeCooler(airflow, fanPower, USUAL_EFFECTIVENESS, USUAL_BLEED);
  }

  /**
   * What it blows into the room.
   *
   * @param air state of the air behind the blower
   * @param dryAir its flow, kg/s of dry air
   * @param evaporated water taken up by it, kg/s
   * @param waterUsed water drawn from the tap, kg/s: evaporated and bled
   */
  public record Supply(AirState air, double dryAir, double evaporated, double waterUsed) {}

  /**
   * The supply while it runs.
   *
   * @param outdoor outdoor air, its wet bulb 0 °C or above
   * @return the supply
   * @throws IllegalArgumentException if colder
   */
  public Supply supply(AirState outdoor) {
    double wetBulb = padTemperature(outdoor);
    if (!(wetBulb >= FREEZING)) {
      throw new IllegalArgumentException(
          "outdoor wet bulb " + wetBulb + " °C would freeze the pads");
    }
    return supply(outdoor, wetBulb);
  }

  /** The wet bulb; of fog, the dry bulb. */
  private static double padTemperature(AirState outdoor) {
    return Math.min(outdoor.wetBulb(), outdoor.dryBulb());
  }

  private Supply supply(AirState outdoor, double wetBulb) {
    double dryAir = airflow * outdoor.dryAirDensity();
    double cooled = outdoor.dryBulb() - effectiveness * (outdoor.dryBulb() - wetBulb);
    double water = MoistAir.SPECIFIC_HEAT_WATER * wetBulb;
    // h supply = h outdoor + (W supply - W outdoor) h water, solved for W supply
    double humidityRatio =
        (outdoor.enthalpy()
                - outdoor.humidityRatio() * water
                - MoistAir.SPECIFIC_HEAT_DRY_AIR * cooled)
            / (Saturation.vapourEnthalpy(cooled) - water);
    double evaporated = dryAir * Math.max(0, humidityRatio - outdoor.humidityRatio());
    double taken = Math.max(humidityRatio, outdoor.humidityRatio());
    double warmed = cooled + fanPower / (dryAir * MoistAir.humidHeat(taken));
    return new Supply(
        new AirState(warmed, taken, outdoor.pressure()),
        dryAir,
        evaporated,
        (1 + bleed) * evaporated);
  }

  /**
   * {@inheritDoc}
   *
   * <p>Demand is the part of the time it runs. Sensible heat and water hold the whole exchange with
   * outdoors. Below 0 °C wet bulb it stays off, marked {@link Limit#TOO_COLD}.
   */
  @Override
  public RoomEffect at(AirState room, AirState outdoor, double demand) {
    Figures.requireQuestion(room, outdoor, demand);
    double wetBulb = padTemperature(outdoor);
    if (wetBulb < FREEZING) {
      return RoomEffect.heatOfPower(0, 0, Limit.TOO_COLD.bit());
    }
    Supply supply = supply(outdoor, wetBulb);
    double dryAir = demand * supply.dryAir();
    double water = demand * supply.evaporated();
    return new RoomEffect(
        dryAir
            * MoistAir.humidHeat(supply.air().humidityRatio())
            * (supply.air().dryBulb() - room.dryBulb()),
        dryAir * (supply.air().humidityRatio() - room.humidityRatio()),
        0,
        dryAir,
        demand * fanPower,
        demand,
        new Elsewhere(
            dryAir * (room.enthalpy() - outdoor.enthalpy()),
            dryAir * (room.humidityRatio() - outdoor.humidityRatio()),
            -water,
            -water * MoistAir.SPECIFIC_HEAT_WATER * wetBulb),
        Limit.setOf(0));
  }
}
