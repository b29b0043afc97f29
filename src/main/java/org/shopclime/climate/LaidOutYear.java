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
 * Lays day types out as a year of hours, in the order of {@link DayOrder}, so that walls and weeks
 * meet the types as they meet weather.
 *
 * <p>The days of a type are spread in mean temperature, sun and wind as they were observed to be;
 * the sunnier ones swing wider. The mean temperature runs straight from the middle of one day to
 * the middle of the next, bent so that each day keeps its mean; the usual course of the quarter
 * rides on it. Sun follows the clear sky of the day, its beam and its whole each scaled to the
 * day's mean.
 *
 * <p>Error: against the hourly year see {@code YearComparison} and the methods page. Averages
 * flatten extremes: peaks are never to be taken from a laid-out year.
 */
public final class LaidOutYear {

  private static final double REFLECTANCE = 0.2;

  /** Part of a neighbour's middle that a day's mean holds when means run straight. */
  private static final double NEIGHBOUR = 1.0 / 8;

  /** Rounds of bending; each makes what is left a third, to below a millionth. */
  private static final int ROUNDS = 15;

  private static final int DAYS = WeatherYear.COUNT / Hours.COUNT;
  private static final double NOON = 12;

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
   * @return the year; statistics in an order of our own, no record of any hour
   */
  public static WeatherYear of(TypicalYear types, StationClimate climate) {
    return new LaidOutYear(types, climate).year();
  }

  /** A day of a type: its rank in warmth among the days of that type, from 0. */
  private record Placed(DayType type, int rank) {

    /** A figure of this day: never below nothing, its mean over the days of the type as told. */
    double spread(double mean, double spread, int place) {
      double[] scores = DayOrder.scores(type.days());
      double sum = 0;
      for (double score : scores) {
        sum += Math.max(0, mean + spread * score) / type.days();
      }
      return sum > 0 ? Math.max(0, mean + spread * scores[place]) * mean / sum : 0;
    }

    double mean() {
      return type.mean() + type.spread().dryBulb() * DayOrder.scores(type.days())[rank];
    }

    int sunRank() {
      return DayOrder.sun(rank, type.days());
    }

    double swing() {
      double sunny = DayOrder.scores(type.days())[sunRank()];
      return Math.max(0, type.swing() + type.spread().swingBySun() * sunny);
    }

    double global() {
      return spread(type.global(), type.spread().global(), sunRank());
    }

    double direct() {
      return spread(type.direct(), type.spread().direct(), sunRank());
    }

    /** The sunniest day is the least cloudy one. */
    double cloud() {
      int dull = type.days() - 1 - sunRank();
      return Math.min(1, spread(type.opaqueCloud(), type.spread().opaqueCloud(), dull));
    }

    double wind() {
      return spread(type.wind(), type.spread().wind(), DayOrder.wind(rank, type.days()));
    }
  }

  private WeatherYear year() {
    Placed[] days = place();
    double[] middles = middles(days);
    for (int day = 0; day < DAYS; day++) {
      layAir(day, days[day], middles);
      laySun(day, days[day]);
    }
    return new WeatherYear(types.station(), values);
  }

  private Placed[] place() {
    Placed[] days = new Placed[DAYS];
    int day = 0;
    for (int month = 1; month <= Months.COUNT; month++) {
      List<DayType> fifths = types.month(month);
      for (int rank : DayOrder.ranks(fifths.stream().mapToInt(DayType::days).sum())) {
        int fifth = 0;
        int colder = 0;
        while (rank >= colder + fifths.get(fifth).days()) {
          colder += fifths.get(fifth).days();
          fifth++;
        }
        days[day] = new Placed(fifths.get(fifth), rank - colder);
        day++;
      }
    }
    return days;
  }

  /** Temperatures in the middle of each day that give each day its mean. */
  private static double[] middles(Placed[] days) {
    double[] middles = new double[DAYS];
    for (int day = 0; day < DAYS; day++) {
      middles[day] = days[day].mean();
    }
    for (int round = 0; round < ROUNDS; round++) {
      double[] bent = new double[DAYS];
      for (int day = 0; day < DAYS; day++) {
        double beside = middles[(day + DAYS - 1) % DAYS] + middles[(day + 1) % DAYS];
        bent[day] = (days[day].mean() - NEIGHBOUR * beside) / (1 - 2 * NEIGHBOUR);
      }
      middles = bent;
    }
    return middles;
  }

  private void layAir(int day, Placed placed, double[] middles) {
    int quarter = TypicalYear.quarter(placed.type().month());
    Hours course = types.course().get(quarter);
    Hours windCourse = types.windCourse().get(quarter);
    double range = course.max() - course.min();
    double wind = placed.wind();
    for (int ending = 1; ending <= Hours.COUNT; ending++) {
      double fromMiddle = (ending - NOON) / Hours.COUNT;
      int other = Math.floorMod(day + (fromMiddle < 0 ? -1 : 1), DAYS);
      double running = middles[day] + Math.abs(fromMiddle) * (middles[other] - middles[day]);
      double riding = range > 0 ? placed.swing() * course.at(ending) / range : 0;
      double dryBulb = running + riding;
      double dewPoint = Math.min(dryBulb, placed.type().dewPoint());
      int hour = day * Hours.COUNT + ending - 1;
      put(WeatherColumn.DRY_BULB, hour, dryBulb);
      put(WeatherColumn.DEW_POINT, hour, dewPoint);
      put(
          WeatherColumn.RELATIVE_HUMIDITY,
          hour,
          MoistAir.saturationPressure(dewPoint) / MoistAir.saturationPressure(dryBulb));
      put(WeatherColumn.WIND_SPEED, hour, wind * windCourse.at(ending));
      put(WeatherColumn.PRESSURE, hour, climate.pressure());
    }
  }

  private void laySun(int day, Placed placed) {
    int month = placed.type().month();
    ClearSky[] skies = new ClearSky[Hours.COUNT];
    double[] height = new double[Hours.COUNT];
    double beams = 0;
    double wholes = 0;
    for (int of = 0; of < Hours.COUNT; of++) {
      double altitude = sun(day, of).altitudeDeg();
      height[of] = Math.max(0, Math.sin(Math.toRadians(altitude)));
      skies[of] =
          BirdClearSky.at(
              altitude,
              day + 1,
              climate.pressure(),
              BirdClearSky.USUAL_OZONE_CM,
              climate.waterCm().at(month),
              climate.aerosol().depth().at(month),
              REFLECTANCE);
      beams += skies[of].directNormal() / Hours.COUNT;
      wholes += skies[of].globalHorizontal() / Hours.COUNT;
    }
    double cloud = placed.cloud();
    double beamPart = beams > 0 ? placed.direct() / beams : 0;
    double wholePart = wholes > 0 ? placed.global() / wholes : 0;
    for (int of = 0; of < Hours.COUNT; of++) {
      int hour = day * Hours.COUNT + of;
      double global = skies[of].globalHorizontal() * wholePart;
      double direct = skies[of].directNormal() * beamPart;
      put(WeatherColumn.GLOBAL, hour, global);
      put(WeatherColumn.DIRECT_NORMAL, hour, direct);
      put(WeatherColumn.DIFFUSE, hour, Math.max(0, global - direct * height[of]));
      put(WeatherColumn.OPAQUE_CLOUD, hour, cloud);
      put(WeatherColumn.TOTAL_CLOUD, hour, cloud);
      put(WeatherColumn.WATER, hour, climate.waterCm().at(month));
      put(WeatherColumn.AEROSOL, hour, climate.aerosol().depth().at(month));
      put(WeatherColumn.ALBEDO, hour, REFLECTANCE);
    }
  }

  private SunAngles sun(int day, int of) {
    Station station = types.station();
    return SunPosition.atStandardTime(
        WeatherYear.COMMON_YEAR,
        day + 1,
        of + 0.5,
        station.timeZoneHours(),
        station.latitudeDeg(),
        station.longitudeDeg(),
        station.elevationM());
  }

  private void put(WeatherColumn column, int hour, double value) {
    values.get(column)[hour] = value;
  }
}
