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
        lay(day, fifths.get(fifth), rank - colder);
        day++;
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

  public static double SPREAD = Double.parseDouble(System.getProperty("spread", "1"));

  /** Where the n-th of some days stands among them: normal scores, scaled to a spread of one. */
  private static double score(int n, int of) {
    double[] z = new double[of];
    double square = 0;
    for (int i = 0; i < of; i++) {
      double p = (i + 0.625) / (of + 0.25);
      z[i] = Math.sqrt(2) * inverseErf(2 * p - 1);
      square += z[i] * z[i] / of;
    }
    return z[n] / Math.sqrt(square);
  }

  private static double inverseErf(double x) {
    double ln = Math.log(1 - x * x);
    double a = 2 / (Math.PI * 0.147) + ln / 2;
    return Math.signum(x) * Math.sqrt(Math.sqrt(a * a - ln / 0.147) - a);
  }

  private void lay(int day, DayType type, int nth) {
    double offset = SPREAD * type.spread() * score(nth, type.days());
    Hours shape = types.shape().get(type.month() - 1);
    double middle = shape.mean();
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
          type.mean() + offset + (type.high() - type.low()) * (shape.at(of + 1) - middle);
      double dewPoint = Math.min(dryBulb, type.dewPoint());
      double direct = beams > 0 ? beam[of] * type.direct() / beams : 0;
      double global = wholes > 0 ? whole[of] * type.global() / wholes : 0;
      put(WeatherColumn.DRY_BULB, hour, dryBulb);
      put(WeatherColumn.DEW_POINT, hour, dewPoint);
      put(WeatherColumn.DIRECT_NORMAL, hour, direct);
      put(WeatherColumn.GLOBAL, hour, global);
      put(WeatherColumn.DIFFUSE, hour, Math.max(0, global - direct * sine[of]));
      put(WeatherColumn.OPAQUE_CLOUD, hour, type.opaqueCloud());
      put(WeatherColumn.TOTAL_CLOUD, hour, type.opaqueCloud());
      put(WeatherColumn.WIND_SPEED, hour, type.wind());
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
