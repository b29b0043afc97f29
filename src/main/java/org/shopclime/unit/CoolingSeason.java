package org.shopclime.unit;

import org.shopclime.air.AirState;
import org.shopclime.air.MoistAir;
import org.shopclime.quantity.Units;

/**
 * The cooling season behind SEER2, and the efficiency at 95 °F that makes it.
 *
 * <p>Source: 10 CFR 430 subpart B appendix M1, section 4.1 and table 19 (AHRI Standard 210/240):
 * the building asks the cooling capacity over {@value #OVERSIZE} (variable speed {@value
 * #VARIABLE_SLOPE} of it) at 95 °F and nothing at 65 °F, in bins of 5 °F, the room at 80 °F dry and
 * 67 °F wet bulb; from memory. In each bin the unit runs by the curves of {@link DuctlessHeatPump},
 * where the rule draws lines through a few tests. What was called SEER before 2023 is the same
 * figure for a unit without ducts ({@link SeasonalRating.Build#DUCTLESS}).
 */
public final class CoolingSeason {

  private static final double OVERSIZE = 1.1;
  private static final double VARIABLE_SLOPE = 0.93;

  /** Least efficiency at 95 °F that a label is taken to mean, W/W. */
  public static final double LEAST = 1.5;

  /** Greatest such efficiency, W/W. */
  public static final double MOST = 7;

  private static final Range EFFICIENCY = new Range(LEAST, MOST);

  /** Labels that the bond of single speeds is made for, BTU/Wh. */
  private static final Range SINGLE_SPEED = new Range(5, 20);

  private static final double NO_LOAD = 65;
  private static final double HOT = 95;

  /** Middle of the coolest bin that asks for cooling, °F, and how far bins lie apart. */
  private static final double FIRST = 67;

  private static final double STEP = 5;

  /** Hours of each bin, parts of the season. */
  private static final double[] PARTS = {0.214, 0.231, 0.216, 0.161, 0.104, 0.052, 0.018, 0.004};

  private CoolingSeason() {}

  /**
   * Heat taken out in the season for what is drawn.
   *
   * @param pump the unit
   * @param capacity its rated cooling, W, above 0
   * @param compressor its compressor
   * @return SEER2, W/W
   */
  public static double seer2(DuctlessHeatPump pump, double capacity, Compressor compressor) {
    Figures.requirePositive("rated capacity", capacity, "W");
    RoomPlant cooler = pump.cooling();
    double slope = compressor.turnDown() < 1 ? VARIABLE_SLOPE : 1;
    AirState room =
        AirState.ofWetBulb(
            RatingPoint.INDOOR_DRY_BULB, RatingPoint.INDOOR_WET_BULB, MoistAir.STANDARD_PRESSURE);
    double heat = 0;
    double drawn = 0;
    for (int bin = 0; bin < PARTS.length; bin++) {
      double outdoors = FIRST + STEP * bin;
      double asked = (outdoors - NO_LOAD) / (HOT - NO_LOAD) * slope * capacity / OVERSIZE;
      AirState outdoor =
          new AirState(
              Units.celsius(outdoors), room.humidityRatio() / 2, MoistAir.STANDARD_PRESSURE);
      double able = -cooler.at(room, outdoor, 1).heatToRoom(room.dryBulb());
      RoomEffect effect = cooler.at(room, outdoor, Math.min(1, asked / able));
      heat -= PARTS[bin] * effect.heatToRoom(room.dryBulb());
      drawn += PARTS[bin] * effect.power();
    }
    return heat / drawn;
  }

  /**
   * The efficiency at 95 °F of a usual unit that a label means. Of variable speed it is the one
   * whose season makes the label; what it draws goes as one over it, so the season is run once. Of
   * one speed it is that of the published bond, {@link SeasonalRating#singleSpeedEer}, as good
   * units of one speed owe their label to more than their curves.
   *
   * @param capacity rated cooling, W, above 0
   * @param compressor one speed or variable
   * @param seer2 the label, W/W, above 0
   * @return W/W, 1.5 to 7; the nearest edge where no efficiency makes the label
   */
  public static double eer(double capacity, Compressor compressor, double seer2) {
    Figures.requirePositive("SEER2", seer2, "W/W");
    if (!(compressor.turnDown() < 1)) {
      double seer = SINGLE_SPEED.nearest(seer2 / Units.wattsPerWattFromEer(1));
      return EFFICIENCY.nearest(Units.wattsPerWattFromEer(SeasonalRating.singleSpeedEer(seer)));
    }
    Rating one = Rating.ofCop(capacity, 1);
    double season = seer2(DuctlessHeatPump.usual(one, one, compressor), capacity, compressor);
    return EFFICIENCY.nearest(seer2 / season);
  }
}
