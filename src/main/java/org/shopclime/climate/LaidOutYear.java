package org.shopclime.climate;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.shopclime.air.MoistAir;
import org.shopclime.sun.BirdClearSky;
import org.shopclime.sun.ClearSky;
import org.shopclime.sun.SunAngles;
import org.shopclime.sun.SunPosition;

/**
 * Lays day types out as a year of hours.
 *
 * <p>Within a month the types follow each other up and down, coldest to hottest and back, each day
 * of a month once in each turn, so that walls and weeks meet them as they meet weather. The dry
 * bulb follows the month's usual course between the type's low and high; sun follows the clear sky
 * of the day, its beam and its whole each scaled to the type's mean.
 */
public final class LaidOutYear {

  /** Ranks of 31 days from the coldest, 0, in the order in which they follow each other. */
  private static final int[] ORDER = {
    21, 24, 11, 16, 9, 15, 12, 23, 28, 29, 20, 6, 2, 4, 5, 0, 1, 14, 7, 10, 22, 13, 3, 8, 25, 27,
    30, 17, 18, 26, 19
  };

  private static final double OZONE_CM = BirdClearSky.USUAL_OZONE_CM;
  private static final double REFLECTANCE = 0.2;

  private final TypicalYear types;
  private final StationClimate climate;
  private final Map<WeatherColumn, double[]> values = new EnumMap<>(WeatherColumn.class);

  private LaidOutYear(TypicalYear types, StationClimate climate) {
    this.types = types;
    this.climate = climate;
    for (WeatherColumn column : WeatherColumn.values()) {
      values.put(column, new double[WeatherYear.COUNT]);
    }
  }

  /**
   * A year of hours.
   *
   * @param types day types of a station
   * @param climate its climate, for pressure, haze and water
   * @return the year; hours of one type differ from day to day only as the sun's height does
   */
  public static WeatherYear of(TypicalYear types, StationClimate climate) {
    return new LaidOutYear(types, climate).year();
  }

  private WeatherYear year() {
    for (int pass = 0; pass < 2; pass++) {
      if (pass == 1 && RAMP) {
        double[] t = means.clone();
        for (int it = 0; it < 60; it++) {
          double[] n = new double[365];
          for (int i = 0; i < 365; i++) {
            n[i] = (t[i] - 0.125 * means[(i + 364) % 365] - 0.125 * means[(i + 1) % 365]) / 0.75;
          }
          System.arraycopy(n, 0, means, 0, 365);
        }
      }
      int day = 1;
      for (int month = 1; month <= Months.COUNT; month++) {
        List<DayType> fifths = types.month(month);
        for (int rank : ranks(fifths.stream().mapToInt(DayType::days).sum())) {
          int fifth = 0;
          int colder = 0;
          while (rank >= colder + fifths.get(fifth).days()) {
            colder += fifths.get(fifth).days();
            fifth++;
          }
          if (pass == 0) {
            DayType type = fifths.get(fifth);
            means[day - 1] =
                type.mean() + SPREAD * type.spread().dryBulb() * score(rank - colder, type.days());
          } else {
            lay(day, fifths.get(fifth), rank - colder);
          }
          day++;
        }
      }
    }
    return new WeatherYear(types.station(), values);
  }

  /** Ranks of the days of a month, 0 for the coldest, day by day. */
  static int[] ranks(int days) {
    return java.util.stream.IntStream.range(0, days)
        .map(
            day ->
                (int)
                    java.util.Arrays.stream(ORDER, 0, days)
                        .filter(other -> other < ORDER[day])
                        .count())
        .toArray();
  }

  static final double STRETCH = Double.parseDouble(System.getProperty("stretch", "1"));
  static final double SPREAD = Double.parseDouble(System.getProperty("spread", "1"));
  static final double SUNSPREAD = Double.parseDouble(System.getProperty("sunspread", "1"));
  static final double WINDSPREAD = Double.parseDouble(System.getProperty("windspread", "1"));

  /** How the n-th of some days of a type stands in sun and in wind, ranks from 0. */
  private static final int[][] SUN_RANKS = {
    {0, 4, 3, 2, 1}, {2, 5, 1, 0, 4, 3}, {2, 6, 3, 0, 4, 1, 5}
  };

  private static final int[][] WIND_RANKS = {
    {2, 1, 4, 0, 3}, {4, 3, 1, 2, 0, 5}, {3, 1, 6, 4, 2, 0, 5}
  };

  /** Where the n-th of some days stands among them: normal scores, scaled to a spread of one. */
  private static double score(int n, int of) {
    return scores(of)[n];
  }

  private static double[] scores(int of) {
    double[] z = new double[of];
    double square = 0;
    for (int i = 0; i < of; i++) {
      double p = (i + 0.625) / (of + 0.25);
      z[i] = Math.sqrt(2) * inverseErf(2 * p - 1);
      square += z[i] * z[i] / of;
    }
    for (int i = 0; i < of; i++) {
      z[i] /= Math.sqrt(square);
    }
    return z;
  }

  /** A figure of the n-th day: never below nothing, and its mean over the days as told. */
  private static double spread(double mean, double spread, int rank, int of) {
    double[] z = scores(of);
    double sum = 0;
    for (double each : z) {
      sum += Math.max(0, mean + spread * each) / of;
    }
    return sum > 0 ? Math.max(0, mean + spread * z[rank]) * mean / sum : 0;
  }

  private static double inverseErf(double x) {
    double ln = Math.log(1 - x * x);
    double a = 2 / (Math.PI * 0.147) + ln / 2;
    return Math.signum(x) * Math.sqrt(Math.sqrt(a * a - ln / 0.147) - a);
  }

  static final double SWING = Double.parseDouble(System.getProperty("swing", "1"));
  static final boolean RAMP = Boolean.parseBoolean(System.getProperty("ramp", "true"));

  static final double BYSUN = Double.parseDouble(System.getProperty("bysun", "1"));

  private static double amplitude(DayType type) {
    return SWING * type.swing() + (1 - SWING) * (type.high() - type.low());
  }

  private final double[] means = new double[365];

  /** From the middle of one day to the middle of the next the mean runs straight. */
  private double base(int day, int of) {
    if (!RAMP) {
      return means[day - 1];
    }
    double at = (of + 1 - 12) / 24.0;
    int other = Math.floorMod(day - 1 + (at < 0 ? -1 : 1), 365);
    return means[day - 1] + Math.abs(at) * (means[other] - means[day - 1]);
  }

  private void lay(int day, DayType type, int nth) {
    int of5 = type.days() - 5;
    int sunRank = SUN_RANKS[of5][nth];
    int windRank = WIND_RANKS[of5][nth];
    double wind = spread(type.wind(), WINDSPREAD * type.spread().wind(), windRank, type.days());
    double dayDirect =
        spread(type.direct(), SUNSPREAD * type.spread().direct(), sunRank, type.days());
    double dayGlobal =
        spread(type.global(), SUNSPREAD * type.spread().global(), sunRank, type.days());
    double cloud =
        Math.min(
            1,
            spread(
                type.opaqueCloud(),
                SUNSPREAD * type.spread().opaqueCloud(),
                type.days() - 1 - sunRank,
                type.days()));
    Hours course = types.course().get(TypicalYear.quarter(type.month()));
    Hours windCourse = types.windCourse().get(TypicalYear.quarter(type.month()));
    double[] beam = new double[Hours.COUNT];
    double[] whole = new double[Hours.COUNT];
    double[] sine = new double[Hours.COUNT];
    double beams = 0;
    double wholes = 0;
    Station station = types.station();
    for (int of = 0; of < Hours.COUNT; of++) {
      SunAngles sun =
          SunPosition.atStandardTime(
              WeatherYear.COMMON_YEAR,
              day,
              of + 0.5,
              station.timeZoneHours(),
              station.latitudeDeg(),
              station.longitudeDeg(),
              station.elevationM());
      ClearSky sky =
          BirdClearSky.at(
              sun.altitudeDeg(),
              day,
              climate.pressure(),
              OZONE_CM,
              climate.waterCm().at(type.month()),
              climate.aerosol().depth().at(type.month()),
              REFLECTANCE);
      beam[of] = sky.directNormal();
      whole[of] = sky.globalHorizontal();
      sine[of] = Math.max(0, Math.sin(Math.toRadians(sun.altitudeDeg())));
      beams += beam[of] / Hours.COUNT;
      wholes += whole[of] / Hours.COUNT;
    }
    for (int of = 0; of < Hours.COUNT; of++) {
      int hour = (day - 1) * Hours.COUNT + of;
      double dryBulb =
          base(day, of)
              + (amplitude(type)
                      + BYSUN * type.spread().swingBySun() * scores(type.days())[sunRank])
                  * course.at(of + 1)
                  / (course.max() - course.min());
      double dewPoint = Math.min(dryBulb, type.dewPoint());
      double direct = beams > 0 ? beam[of] * dayDirect / beams : 0;
      double global = wholes > 0 ? whole[of] * dayGlobal / wholes : 0;
      put(WeatherColumn.DRY_BULB, hour, dryBulb);
      put(WeatherColumn.DEW_POINT, hour, dewPoint);
      put(WeatherColumn.DIRECT_NORMAL, hour, direct);
      put(WeatherColumn.GLOBAL, hour, global);
      put(WeatherColumn.DIFFUSE, hour, Math.max(0, global - direct * sine[of]));
      put(WeatherColumn.OPAQUE_CLOUD, hour, cloud);
      put(WeatherColumn.TOTAL_CLOUD, hour, cloud);
      put(WeatherColumn.WIND_SPEED, hour, wind * windCourse.at(of + 1));
      put(WeatherColumn.PRESSURE, hour, climate.pressure());
      put(WeatherColumn.WATER, hour, climate.waterCm().at(type.month()));
      put(WeatherColumn.AEROSOL, hour, climate.aerosol().depth().at(type.month()));
      put(WeatherColumn.ALBEDO, hour, REFLECTANCE);
      put(
          WeatherColumn.RELATIVE_HUMIDITY,
          hour,
          MoistAir.saturationPressure(dewPoint) / MoistAir.saturationPressure(dryBulb));
    }
  }

  private void put(WeatherColumn column, int hour, double value) {
    values.get(column)[hour] = value;
  }
}
