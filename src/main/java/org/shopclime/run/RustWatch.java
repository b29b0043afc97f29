package org.shopclime.run;

import org.shopclime.air.MoistAir;
import org.shopclime.balance.YearWeather;
import org.shopclime.run.YearResult.Figure;

/**
 * Where moisture of the room's air meets iron and slab, hour by hour through a year: iron rusts
 * where water gathers on it, and where the air at its face is damp for long.
 *
 * <p>Two pieces of iron are looked at, and the colder counts: the machines and stock of the shop's
 * description, plates of 12 mm in the network; and a heavy casting, which no description needs: a
 * plate {@value #CASTING_MM} mm thick, bare to the room on both sides. It is lumped: within it the
 * temperature differs by a two-hundredth of what the film sees (Biot number h d / 2 k = 0.004). Its
 * film is 8 W/(m²·K), 5 of it radiation and 3 still air (common practice), its time constant rho c
 * d / 2 h = 3.3 hours. It follows the mean of air and radiant temperature, taken as constant
 * through each hour; that answer is exact.
 *
 * <p>Source: damp begins at a relative humidity of 80 % at the metal's own temperature, the limit
 * of "time of wetness" in ISO 9223; bare, freshly blasted or salty steel begins to rust at about 60
 * % (critical humidity; W. H. J. Vernon, Transactions of the Faraday Society, 1931 and 1935); both
 * from memory. At 100 % the dew point is at the metal's temperature: water gathers.
 */
public final class RustWatch {

  /** Relative humidity at the face from which iron counts as damp. */
  public static final double DAMP = 0.8;

  /** The same from which bare steel begins to rust. */
  public static final double BARE = 0.6;

  /** Thickness of the casting, mm. */
  static final double CASTING_MM = 50;

  private static final double DENSITY = 7800;
  private static final double SPECIFIC_HEAT = 490;
  private static final double FILM = 8;

  /** Time constant of the heavy casting, s. */
  static final double CASTING_SECONDS = DENSITY * SPECIFIC_HEAT * CASTING_MM / 1000 / 2 / FILM;

  private static final double DRIEST = 1e-6;
  private static final int HOURS = YearWeather.HOURS;
  private static final double FREEZING = 0;
  private static final double HOUR = 3600;

  private final YearResult year;
  private final int room;
  private final double pressure;
  private final double[] iron = new double[HOURS];

  private RustWatch(YearResult year, int room) {
    this.year = year;
    this.room = room;
    pressure = year.year().pressure();
    double left = Math.exp(-HOUR / CASTING_SECONDS);
    double casting = year.at(Figure.OPERATIVE, room, HOURS - 1);
    // The last days of the year stand for those before it.
    for (int turn = HOURS - 7 * 24; turn < 2 * HOURS; turn++) {
      int hour = turn % HOURS;
      double drive = year.at(Figure.OPERATIVE, room, hour);
      double mean = drive + (casting - drive) * (1 - left) * CASTING_SECONDS / HOUR;
      casting = drive + (casting - drive) * left;
      iron[hour] = Math.min(mean, year.iron(room, hour));
    }
  }

  /**
   * Looks at a room.
   *
   * @param year a year's run
   * @param room index of the room
   * @return its moist hours
   */
  public static RustWatch of(YearResult year, int room) {
    return new RustWatch(year, room);
  }

  /**
   * Temperature of the coldest iron.
   *
   * @param hour 0 to 8,759
   * @return mean of the hour, °C
   */
  public double iron(int hour) {
    return iron[hour];
  }

  /**
   * Face of the coldest floor on the ground.
   *
   * @param hour 0 to 8,759
   * @return mean of the hour, °C; infinite where no floor lies on the ground
   */
  public double slab(int hour) {
    return year.slab(room, hour);
  }

  /**
   * Dew point of the room's air.
   *
   * @param hour 0 to 8,759
   * @return that of the hour's mean humidity ratio, °C
   */
  public double dewPoint(int hour) {
    // Air that a coil dried wholly has no dew point; this is -84 °C.
    return MoistAir.dewPoint(
        Math.max(DRIEST, year.at(Figure.HUMIDITY_RATIO, room, hour)), pressure);
  }

  /**
   * Relative humidity of the room's air.
   *
   * @param hour 0 to 8,759
   * @return 0 to 1
   */
  public double relativeHumidity(int hour) {
    return at(year.at(Figure.AIR, room, hour), hour);
  }

  /**
   * Relative humidity of that air at the temperature of the coldest iron.
   *
   * @param hour 0 to 8,759
   * @return 0 to 1; 1 also where water gathers
   */
  public double atIron(int hour) {
    return at(iron[hour], hour);
  }

  private double at(double celsius, int hour) {
    double ratio = year.at(Figure.HUMIDITY_RATIO, room, hour);
    return Math.min(
        1, MoistAir.vapourPressure(ratio, pressure) / MoistAir.saturationPressure(celsius));
  }

  /**
   * What was counted over some hours.
   *
   * @param ironWet hours in which the dew point is at or above the coldest iron
   * @param slabWet hours in which it is at or above the slab's face
   * @param wet hours in which it is at or above either
   * @param damp hours in which the air at the coldest iron is at {@link #DAMP} or above and that
   *     iron is not frozen
   * @param bare the same at {@link #BARE} or above
   */
  public record Count(int ironWet, int slabWet, int wet, int damp, int bare) {}

  /**
   * Counts hours.
   *
   * @param from first hour, 0 to 8,759
   * @param to hour after the last, up to 8,760
   * @return counts
   */
  public Count count(int from, int to) {
    int ironWet = 0;
    int slabWet = 0;
    int wet = 0;
    int damp = 0;
    int bare = 0;
    for (int hour = from; hour < to; hour++) {
      double dew = dewPoint(hour);
      boolean onIron = dew >= iron[hour];
      boolean onSlab = dew >= slab(hour);
      ironWet += onIron ? 1 : 0;
      slabWet += onSlab ? 1 : 0;
      wet += onIron || onSlab ? 1 : 0;
      double there = iron[hour] > FREEZING ? atIron(hour) : 0;
      damp += there >= DAMP ? 1 : 0;
      bare += there >= BARE ? 1 : 0;
    }
    return new Count(ironWet, slabWet, wet, damp, bare);
  }

  /**
   * Counts the year.
   *
   * @return counts of 8,760 hours
   */
  public Count count() {
    return count(0, HOURS);
  }
}
