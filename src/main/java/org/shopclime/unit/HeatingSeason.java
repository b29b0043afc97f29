package org.shopclime.unit;

import org.shopclime.air.AirState;
import org.shopclime.air.MoistAir;
import org.shopclime.quantity.Units;

/**
 * The heating season behind HSPF2, and the efficiency at 47 °F that makes it.
 *
 * <p>Source: 10 CFR 430 subpart B appendix M1, section 4.2 and table 20, region IV: the building
 * asks the cooling capacity times {@value #SLOPE} (variable speed {@value #VARIABLE_SLOPE}) at 5 °F
 * and nothing at 55 °F, in bins of 5 °F; resistance gives what the unit cannot; from memory. In
 * each bin the unit runs by the curves of {@link DuctlessHeatPump}, where the rule draws lines
 * through a few tests; no credit for defrosting on demand.
 */
public final class HeatingSeason {

  private static final double SLOPE = 1.15;
  private static final double VARIABLE_SLOPE = 1.07;

  /** Least efficiency at 47 °F that a label is taken to mean, W/W. */
  public static final double LEAST_COP = 1.5;

  /** Greatest such efficiency, W/W. */
  public static final double MOST_COP = 7;

  private static final Range COP = new Range(LEAST_COP, MOST_COP);

  private static final double NO_LOAD = 55;
  private static final double COLD = 5;

  /** Middle of the warmest bin that asks for heat, °F, and how far bins lie apart. */
  private static final double FIRST = 52;

  private static final double STEP = 5;

  /** Hours of each bin, parts of the season; those above are left out, as they ask nothing. */
  private static final double[] PARTS = {
    0.103, 0.093, 0.100, 0.109, 0.126, 0.087, 0.055, 0.036, 0.026, 0.013, 0.006, 0.002, 0.001
  };

  /** Dry enough for every bin; heating does not ask for it. */
  private static final double WATER = 0.0001;

  private final double heat;
  private final double drawn;
  private final double resistance;

  private HeatingSeason(double heat, double drawn, double resistance) {
    this.heat = heat;
    this.drawn = drawn;
    this.resistance = resistance;
  }

  private static HeatingSeason of(
      DuctlessHeatPump pump, double coolingCapacity, Compressor compressor) {
    RoomPlant heater = pump.heating();
    double slope = compressor.turnDown() < 1 ? VARIABLE_SLOPE : SLOPE;
    AirState room = new AirState(DuctlessHeatPump.RATED_ROOM, WATER, MoistAir.STANDARD_PRESSURE);
    double heat = 0;
    double drawn = 0;
    double resistance = 0;
    for (int bin = 0; bin < PARTS.length; bin++) {
      double outdoors = FIRST - STEP * bin;
      double asked = (NO_LOAD - outdoors) / (NO_LOAD - COLD) * slope * coolingCapacity;
      AirState outdoor = new AirState(Units.celsius(outdoors), WATER, MoistAir.STANDARD_PRESSURE);
      RoomEffect effect = heater.at(room, outdoor, heater.demandFor(asked, room, outdoor));
      heat += PARTS[bin] * asked;
      drawn += PARTS[bin] * effect.power();
      resistance += PARTS[bin] * Math.max(0, asked - effect.sensible());
    }
    return new HeatingSeason(heat, drawn, resistance);
  }

  /**
   * Heat of the season for what is drawn, that of resistance included.
   *
   * @param pump the unit, without back-up heater
   * @param coolingCapacity its rated cooling, W, above 0
   * @param compressor its compressor
   * @return HSPF2, W/W
   */
  public static double hspf2(DuctlessHeatPump pump, double coolingCapacity, Compressor compressor) {
    HeatingSeason season = of(pump, coolingCapacity, compressor);
    return season.heat / (season.drawn + season.resistance);
  }

  /**
   * The efficiency at 47 °F of a usual unit whose season makes a label. What the compressor draws
   * goes as one over it, so the season is run once.
   *
   * @param cooling its rating in cooling
   * @param heatingCapacity heat at 70 °F indoors and 47 °F outdoors, W, above 0
   * @param compressor its compressor
   * @param lowestOutdoor lowest outdoor temperature at which it heats, °C, -60 to 20
   * @param hspf2 the label, W/W, above 0
   * @return W/W, 1.5 to 7; the nearest edge where no efficiency makes the label
   */
  public static double copAt47(
      Rating cooling,
      double heatingCapacity,
      Compressor compressor,
      double lowestOutdoor,
      double hspf2) {
    Figures.requirePositive("HSPF2", hspf2, "W/W");
    DuctlessHeatPump one =
        DuctlessHeatPump.usual(cooling, Rating.ofCop(heatingCapacity, 1), compressor)
            .withLowestOutdoor(lowestOutdoor);
    HeatingSeason season = of(one, cooling.capacity(), compressor);
    double left = season.heat / hspf2 - season.resistance;
    return left > 0 ? COP.nearest(season.drawn / left) : COP.nearest(Double.MAX_VALUE);
  }
}
