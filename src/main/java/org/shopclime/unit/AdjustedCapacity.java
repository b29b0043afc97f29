package org.shopclime.unit;

import java.util.function.Function;
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

  /** Hours a year counted as standby, fan between runs or off. */
  public static final double STANDBY_HOURS = 880 + 1355;

  private static final AirState INDOORS =
      AirState.ofWetBulb(
          RatingPoint.INDOOR_DRY_BULB, RatingPoint.INDOOR_WET_BULB, RatingPoint.PRESSURE);
  private static final AirState HOT =
      AirState.ofWetBulb(
          RatingPoint.OUTDOOR_DRY_BULB, RatingPoint.OUTDOOR_WET_BULB, RatingPoint.PRESSURE);
  private static final AirState MILD =
      AirState.ofWetBulb(Units.celsius(83), Units.celsius(67.5), RatingPoint.PRESSURE);

  /** A capacity to try, W. */
  private static final double TRIED = 3000;

  private static final double LEAST_EER = 1;
  private static final double MOST_EER = 10;

  /** Halvings from 1 to 10 down to less than 1e-11. */
  private static final int HALVINGS = 40;

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

  /**
   * Combined energy efficiency ratio of a portable unit: adjusted capacity over power with a year's
   * standby added.
   *
   * <p>Source: the same appendix: cooling counted 750 hours ({@link Ceer#RUNNING_HOURS}), between
   * runs 880, off 1,355; from memory. One standby power stands for both.
   *
   * @param plant any plant that cools
   * @param standby power in standby, W, 0 or more
   * @return W/W
   * @throws IllegalArgumentException if standby is negative, infinite or NaN
   */
  public static double ceer(RoomPlant plant, double standby) {
    Figures.requireNotNegative("standby", standby, "W");
    double idle = standby * STANDBY_HOURS / Ceer.RUNNING_HOURS;
    return WEIGHT_HOT * left(plant, HOT) / (plant.at(INDOORS, HOT, 1).power() + idle)
        + WEIGHT_MILD * left(plant, MILD) / (plant.at(INDOORS, MILD, 1).power() + idle);
  }

  /**
   * The machine that a unit with this adjusted capacity has in it, all else usual. Whatever its
   * true hose and fan, the unit so made has the label's figure in the label's states.
   *
   * @param kind makes a unit of a rating; twice the rating must do twice as much
   * @param adjusted adjusted capacity, W, above 0
   * @param eer rated capacity over power while running, W/W, above 0
   * @return rating before hose and induced air
   */
  public static Rating machine(Function<Rating, RoomPlant> kind, double adjusted, double eer) {
    Figures.requirePositive("adjusted capacity", adjusted, "W");
    Rating tried = Rating.ofCop(TRIED, eer);
    return Rating.ofCop(TRIED * adjusted / of(kind.apply(tried)), eer);
  }

  /**
   * The same where the combined ratio is known and not the EER, with a standby power of {@link
   * Ceer#USUAL_STANDBY}.
   *
   * @param kind makes a unit of a rating; twice the rating must do twice as much
   * @param adjusted adjusted capacity, W, above 0
   * @param ceer combined ratio of the label, W/W, above 0
   * @return rating before hose and induced air, its EER 1 to 10 W/W: the nearest edge where none
   *     makes the label
   */
  public static Rating machineByCeer(
      Function<Rating, RoomPlant> kind, double adjusted, double ceer) {
    Figures.requirePositive("CEER", ceer, "W/W");
    double low = LEAST_EER;
    double high = MOST_EER;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      RoomPlant tried = kind.apply(machine(kind, adjusted, middle));
      if (ceer(tried, Ceer.USUAL_STANDBY) < ceer) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return machine(kind, adjusted, (low + high) / 2);
  }

  private static double left(RoomPlant plant, AirState outdoor) {
    return -plant
        .at(INDOORS, outdoor, 1)
        .withInducedAirCounted(INDOORS, outdoor)
        .heatToRoom(INDOORS.dryBulb());
  }
}
