package org.shopclime.unit;

import org.shopclime.air.AirState;
import org.shopclime.quantity.Units;

/**
 * The seasonally adjusted cooling capacity of portable units: what is left of the capacity after
 * induced air, hose and case, at 95 °F outdoors with a weight of 0.2 and at 83 °F with 0.8.
 *
 * <p>Source: 10 CFR 430 subpart B appendix CC, as of 2016; from memory. Indoors 80 °F dry and 67 °F
 * wet bulb, outdoors 95 °F dry and 75 °F wet bulb, and 83 °F dry and 67.5 °F wet bulb. The appendix
 * counts induced vapour at 1,061 BTU/lb, we at its enthalpy in the room (3 % more).
 */
public final class AdjustedCapacity {

  /** Weight of the hot state, 1. */
  public static final double WEIGHT_HOT = 0.2;

  /** Weight of the mild state, 1. */
  public static final double WEIGHT_MILD = 0.8;

  private static final AirState INDOORS =
      AirState.ofWetBulb(
          RatingPoint.INDOOR_DRY_BULB, RatingPoint.INDOOR_WET_BULB, RatingPoint.PRESSURE);
  private static final AirState HOT =
      AirState.ofWetBulb(
          RatingPoint.OUTDOOR_DRY_BULB, RatingPoint.OUTDOOR_WET_BULB, RatingPoint.PRESSURE);
  private static final AirState MILD =
      AirState.ofWetBulb(Units.celsius(83), Units.celsius(67.5), RatingPoint.PRESSURE);

  private AdjustedCapacity() {}

  /**
   * Adjusted capacity of a plant, flat out in both states.
   *
   * @param plant any plant that cools
   * @return W
   */
  public static double of(RoomPlant plant) {
    return WEIGHT_HOT * left(plant, HOT) + WEIGHT_MILD * left(plant, MILD);
  }

  private static double left(RoomPlant plant, AirState outdoor) {
    return -plant
        .at(INDOORS, outdoor, 1)
        .withInducedAirCounted(INDOORS, outdoor)
        .heatToRoom(INDOORS.dryBulb());
  }
}
