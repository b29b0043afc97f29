package org.shopclime.gain;

import org.shopclime.quantity.Range;
import org.shopclime.quantity.Units;

/**
 * Heat given off by people at work.
 *
 * <p>Source: ASHRAE Handbook - Fundamentals (2001 to 2017), nonresidential load chapter, Table 1:
 * rates adjusted for a usual mix of people, room at 75 °F. Its note: at 80 °F the total is the
 * same, a fifth of the sensible part passes to the latent part. Between and beyond we go on in a
 * straight line, which gives the older table at 78 °F within its rounding, and no sensible heat
 * from 100 °F up.
 *
 * <p>Error: a large man gives off about 15 % more than the mix; dress, haste and breaks matter
 * more.
 */
public final class PeopleGain {

  private static final double MOST_PEOPLE = 10_000;

  /** 75 °F. */
  private static final double TABLE_CELSIUS = (75 - 32) / 1.8;

  /** A fifth for 5 °F. */
  private static final double SHARE_PASSED_PER_KELVIN = 0.20 / 5 * 1.8;

  private PeopleGain() {}

  /** What people do, as a row of the table. */
  public enum Activity {
    /** Seated, very light work (offices). */
    SEATED(245, 155, 0.60, 0.27),
    /** Light bench work (factory). */
    LIGHT_BENCH_WORK(275, 475, 0.49, 0.35),
    /** Walking at 3 mph, light machine work (factory). */
    MODERATE_WORK(375, 625, 0.49, 0.35),
    /** Heavy work (factory). */
    HEAVY_WORK(580, 870, 0.54, 0.19);

    private final double sensible;
    private final double latent;
    private final double radiantInStillAir;
    private final double radiantInMovingAir;

    Activity(
        double sensibleBtuPerHour,
        double latentBtuPerHour,
        double radiantInStillAir,
        double radiantInMovingAir) {
      this.sensible = Units.wattsFromBtuh(sensibleBtuPerHour);
      this.latent = Units.wattsFromBtuh(latentBtuPerHour);
      this.radiantInStillAir = radiantInStillAir;
      this.radiantInMovingAir = radiantInMovingAir;
    }

    /**
     * Sensible heat of one person.
     *
     * @return W
     */
    public double sensible() {
      return sensible;
    }

    /**
     * Latent heat of one person.
     *
     * @return W
     */
    public double latent() {
      return latent;
    }

    /**
     * Radiant part of the sensible heat in still air (the "low V" column).
     *
     * @return 0 to 1
     */
    public double radiantInStillAir() {
      return radiantInStillAir;
    }

    /**
     * Radiant part of the sensible heat in front of a fan (the "high V" column).
     *
     * @return 0 to 1
     */
    public double radiantInMovingAir() {
      return radiantInMovingAir;
    }
  }

  /**
   * People in still air, which is a shop away from the fan, at 75 °F.
   *
   * @param activity what they do
   * @param count how many, a mean over the hour, 0 to 10,000
   * @return their heat and moisture
   * @throws IllegalArgumentException if the count is outside that range or NaN
   */
  public static HeatGain of(Activity activity, double count) {
    return gain(activity, count, activity.sensible, activity.radiantInStillAir);
  }

  /**
   * People in front of a fan, at 75 °F: as much heat, less of it radiant.
   *
   * @param activity what they do
   * @param count how many, a mean over the hour, 0 to 10,000
   * @return their heat and moisture
   * @throws IllegalArgumentException if the count is outside that range or NaN
   */
  public static HeatGain inMovingAir(Activity activity, double count) {
    return gain(activity, count, activity.sensible, activity.radiantInMovingAir);
  }

  /**
   * People in still air of another temperature: in a warmer room more of the heat leaves as sweat.
   * The sensible part ends at nothing (100 °F) and at the whole (below about 60 °F).
   *
   * @param activity what they do
   * @param count how many, a mean over the hour, 0 to 10,000
   * @param roomCelsius air of the room, °C, -40 to 80; published 23.9 to 26.7
   * @return their heat and moisture
   * @throws IllegalArgumentException if outside those ranges or NaN
   */
  public static HeatGain at(Activity activity, double count, double roomCelsius) {
    Range.check("room temperature, °C,", roomCelsius, -40, 80);
    double kept = 1 - SHARE_PASSED_PER_KELVIN * (roomCelsius - TABLE_CELSIUS);
    double whole = activity.sensible + activity.latent;
    double sensible = Math.min(whole, Math.max(0, kept * activity.sensible));
    return gain(activity, count, sensible, activity.radiantInStillAir);
  }

  private static HeatGain gain(
      Activity activity, double count, double sensibleEach, double radiantShare) {
    Range.check("number of people", count, 0, MOST_PEOPLE);
    HeatGain dry = HeatGain.dry(sensibleEach * count, radiantShare);
    double latentEach = activity.sensible + activity.latent - sensibleEach;
    return new HeatGain(dry.convective(), dry.radiant(), latentEach * count);
  }
}
