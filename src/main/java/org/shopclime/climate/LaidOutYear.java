package org.shopclime.climate;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.shopclime.air.MoistAir;

/**
 * Lays day types out as a year of hours, in the order in which the days followed each other, so
 * that walls and weeks meet the types as they meet weather.
 *
 * <p>The days of a type are spread in mean temperature, swing, sun and wind as they were observed
 * to be. The mean temperature runs straight from the middle of one day to the middle of the next,
 * bent so that each day keeps its mean; the usual course of the month rides on it, times the day's
 * swing, and the waves of 24 and 12 hours that days have beside it, at hours that change from day
 * to day. Sun follows the usual course of the month, its beam and its whole each scaled to the
 * day's mean.
 *
 * <p>Error: against the hourly year see {@code YearComparison} and the methods page. Averages
 * flatten extremes: peaks are never to be taken from a laid-out year.
 */
public final class LaidOutYear {

  private static final double REFLECTANCE = 0.2;

  /** No beam is brighter than the sun outside the air. */
  private static final double BRIGHTEST = 1400;

  /** Turns by which the waves shift from day to day, so that all hours are met evenly. */
  private static final double DAY_WAVE_SHIFT = (3 - Math.sqrt(5)) / 2;

  private static final double HALF_DAY_WAVE_SHIFT = Math.sqrt(3) - 1;

  /** For types of 5, 6 and 7 days: rank in wind of the day of each rank in warmth. */
  private static final List<List<Integer>> WIND =
      List.of(List.of(2, 1, 4, 0, 3), List.of(4, 3, 1, 2, 0, 5), List.of(3, 1, 6, 4, 2, 0, 5));

  private static final int FEWEST = 5;

  private final TypicalYear types;
  private final StationClimate climate;
  private final UsualSky sky;
  private final Map<WeatherColumn, double[]> values = new EnumMap<>(WeatherColumn.class);

  private LaidOutYear(TypicalYear types, StationClimate climate) {
    this.types = types;
    this.climate = climate;
    sky = new UsualSky(types.station());
    for (WeatherColumn column : WeatherColumn.values()) {
      values.put(column, new double[WeatherYear.COUNT]);
    }
  }

  /**
   * A year of hours.
   *
   * @param types day types of a station
   * @param climate its climate, for pressure, haze and water
   * @return the year; statistics in the order of the days, no record of any hour
   */
  public static WeatherYear of(TypicalYear types, StationClimate climate) {
    return new LaidOutYear(types, climate).year();
  }

  /** The days of a type by rank in each figure, from 0: the lowest of each first. */
  private static final class Days {

    private final DayType type;
    private final double[] mean;
    private final double[] swing;
    private final double[] global;
    private final double[] direct;
    private final double[] cloud;
    private final double[] wind;

    Days(DayType type) {
      this.type = type;
      double[] scores = NormalScores.of(type.days());
      DayType.Spread spread = type.spread();
      mean = about(type.mean(), spread.dryBulb(), scores);
      swing = about(type.swing(), spread.swing(), scores);
      global = positive(type.global(), spread.global(), scores);
      direct = positive(type.direct(), spread.direct(), scores);
      cloud = positive(type.opaqueCloud(), spread.opaqueCloud(), scores);
      wind = positive(type.wind(), spread.wind(), scores);
    }

    private static double[] about(double mean, double spread, double[] scores) {
      return Arrays.stream(scores).map(score -> mean + spread * score).toArray();
    }

    /** Never below nothing, their mean still as told. */
    private static double[] positive(double mean, double spread, double[] scores) {
      double[] figures =
          Arrays.stream(about(mean, spread, scores)).map(figure -> Math.max(0, figure)).toArray();
      double found = Arrays.stream(figures).average().orElseThrow();
      return Arrays.stream(figures).map(figure -> found > 0 ? figure * mean / found : 0).toArray();
    }
  }

  /** A day: its type, and its ranks among the days of that type. */
  private record Placed(Days of, int warmth, int sun, int swing) {

    double mean() {
      return of.mean[warmth];
    }

    double swings() {
      return of.swing[swing];
    }

    double global() {
      return of.global[sun];
    }

    double direct() {
      return of.direct[sun];
    }

    /** The sunniest day is the least cloudy one. */
    double cloud() {
      return of.cloud[of.type.days() - 1 - sun];
    }

    double wind() {
      return of.wind[WIND.get(of.type.days() - FEWEST).get(warmth)];
    }
  }

  private WeatherYear year() {
    Placed[] days = place();
    RunningMean running = new RunningMean(Arrays.stream(days).mapToDouble(Placed::mean).toArray());
    for (int day = 0; day < days.length; day++) {
      layAir(day, days[day], running);
      laySun(day, days[day]);
    }
    return new WeatherYear(types.station(), values);
  }

  private Placed[] place() {
    DaySequence sequence = types.sequence();
    Placed[] days = new Placed[DaySequence.DAYS];
    int day = 0;
    for (int month = 1; month <= Months.COUNT; month++) {
      List<Days> fifths = types.month(month).stream().map(Days::new).toList();
      int inMonth = fifths.stream().mapToInt(fifth -> fifth.type.days()).sum();
      for (int of = 0; of < inMonth; of++) {
        int rank = sequence.warmth(day);
        int fifth = DaySequence.fifth(inMonth, rank);
        days[day] =
            new Placed(
                fifths.get(fifth - 1),
                rank - DayTypes.end(inMonth, fifth - 1),
                sequence.sun(day),
                sequence.swing(day));
        day++;
      }
    }
    return days;
  }

  private void layAir(int day, Placed placed, RunningMean running) {
    DayType type = placed.of().type;
    int quarter = DayCourses.quarter(type.month());
    Hours course = types.courses().dryBulb().get(type.month() - 1);
    Hours windCourse = types.courses().wind().get(quarter);
    Hours cloudCourse = types.courses().cloud().get(quarter);
    for (int ending = 1; ending <= Hours.COUNT; ending++) {
      double turn = (double) ending / Hours.COUNT;
      double dryBulb =
          running.at(day, ending)
              + placed.swings() * (course.at(ending) - course.mean())
              + wave(type.spread().dayWave(), turn - DAY_WAVE_SHIFT * day)
              + wave(type.spread().halfDayWave(), 2 * turn - HALF_DAY_WAVE_SHIFT * day);
      double dewPoint = Math.min(dryBulb, type.dewPoint());
      double cloud = Math.max(0, Math.min(1, placed.cloud() + cloudCourse.at(ending)));
      int hour = day * Hours.COUNT + ending - 1;
      put(WeatherColumn.DRY_BULB, hour, dryBulb);
      put(WeatherColumn.DEW_POINT, hour, dewPoint);
      put(
          WeatherColumn.RELATIVE_HUMIDITY,
          hour,
          MoistAir.saturationPressure(dewPoint) / MoistAir.saturationPressure(dryBulb));
      put(WeatherColumn.WIND_SPEED, hour, placed.wind() * windCourse.at(ending));
      put(WeatherColumn.PRESSURE, hour, climate.pressure());
      put(WeatherColumn.OPAQUE_CLOUD, hour, cloud);
      put(WeatherColumn.TOTAL_CLOUD, hour, cloud);
    }
  }

  private static double wave(double amplitude, double turns) {
    return amplitude * Math.cos(2 * Math.PI * turns);
  }

  private void laySun(int day, Placed placed) {
    int month = placed.of().type.month();
    double[] height = new double[Hours.COUNT];
    double[] beam = new double[Hours.COUNT];
    double[] whole = new double[Hours.COUNT];
    for (int of = 0; of < Hours.COUNT; of++) {
      UsualSky.Sun clear = sky.at(day, of);
      height[of] = clear.height();
      beam[of] = clear.direct() * types.courses().direct().get(month - 1).at(of + 1);
      whole[of] = clear.global() * types.courses().global().get(month - 1).at(of + 1);
    }
    scale(beam, placed.direct());
    scale(whole, placed.global());
    for (int of = 0; of < Hours.COUNT; of++) {
      int hour = day * Hours.COUNT + of;
      double direct = Math.min(BRIGHTEST, beam[of]);
      put(WeatherColumn.GLOBAL, hour, whole[of]);
      put(WeatherColumn.DIRECT_NORMAL, hour, direct);
      put(WeatherColumn.DIFFUSE, hour, Math.max(0, whole[of] - direct * height[of]));
      put(WeatherColumn.WATER, hour, climate.waterCm().at(month));
      put(WeatherColumn.AEROSOL, hour, climate.aerosol().depth().at(month));
      put(WeatherColumn.ALBEDO, hour, REFLECTANCE);
    }
  }

  /** Makes the mean of some figures what is wanted; all nothing stay nothing. */
  private static void scale(double[] figures, double mean) {
    double found = Arrays.stream(figures).average().orElseThrow();
    for (int i = 0; i < figures.length; i++) {
      figures[i] *= found > 0 ? mean / found : 0;
    }
  }

  private void put(WeatherColumn column, int hour, double value) {
    values.get(column)[hour] = value;
  }
}
