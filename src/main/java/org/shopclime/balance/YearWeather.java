package org.shopclime.balance;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.shopclime.air.MoistAir;
import org.shopclime.climate.GroundTemperature;
import org.shopclime.climate.Station;
import org.shopclime.climate.WeatherYear;
import org.shopclime.sun.SkyTemperature;
import org.shopclime.sun.SunAngles;
import org.shopclime.sun.SunPosition;
import org.shopclime.sun.SunTimes;

/**
 * A year of weather made ready for shops: air and sky of each hour, and where the sun stands.
 * Serves any number of shops and threads.
 *
 * <p>Hours are told from 0 (the hour ending 01:00 on 1 January) to 8,759, local standard time. The
 * file tells temperature and dew point at the hour's end; the mean of an hour is half way from the
 * end of the one before, 31 December running into 1 January. The sun of an hour stands where it is
 * in the middle of the part of the hour in which it is up; what falls on a face is the mean over
 * the middles of four equal parts of that.
 */
public final class YearWeather {

  /** Hours in the year. */
  public static final int HOURS = WeatherYear.COUNT;

  /** Days in the year. */
  public static final int DAYS = HOURS / Profile.HOURS;

  /** Hours are laid in a common year that begins on a Wednesday. */
  static final int YEAR = 2025;

  /** Parts of an hour at which the sun on faces is looked at. */
  private static final int PARTS = 4;

  private static final SunAngles DOWN = new SunAngles(-1, 0);

  private final Station station;
  private final GroundTemperature ground;
  private final HourAir[] air = new HourAir[HOURS];
  private final double[] sky = new double[HOURS];
  private final double[] direct = new double[HOURS];
  private final double[] diffuse = new double[HOURS];
  private final SunAngles[] sun = new SunAngles[HOURS];
  private final List<List<SunAngles>> suns = new ArrayList<>();
  private final double pressure;

  private YearWeather(WeatherYear year) {
    station = year.station();
    ground = GroundTemperature.ofAir(year);
    double pressures = 0;
    for (int hour = 0; hour < HOURS; hour++) {
      int ends = hour + 1;
      int before = hour == 0 ? HOURS : hour;
      double dryBulb = (year.dryBulb(before) + year.dryBulb(ends)) / 2;
      double dewPoint = Math.min(dryBulb, (year.dewPoint(before) + year.dewPoint(ends)) / 2);
      air[hour] =
          new HourAir(
              dryBulb,
              MoistAir.humidityRatioFromDewPoint(dewPoint, year.pressure(ends)),
              year.pressure(ends),
              year.windSpeed(ends));
      sky[hour] = SkyTemperature.clarkAllen(dryBulb, dewPoint, 10 * year.opaqueCloud(ends));
      direct[hour] = year.directNormal(ends);
      diffuse[hour] = year.diffuseHorizontal(ends);
      pressures += year.pressure(ends);
    }
    pressure = pressures / HOURS;
    for (int day = 0; day < DAYS; day++) {
      placeSun(day);
    }
  }

  /**
   * Makes a year ready.
   *
   * @param year hours of a year, recorded or laid out from day types
   * @return the same, ready for any shop
   */
  public static YearWeather of(WeatherYear year) {
    return new YearWeather(year);
  }

  private void placeSun(int day) {
    SunTimes times =
        SunPosition.times(
            YEAR, day + 1, station.timeZoneHours(), station.latitudeDeg(), station.longitudeDeg());
    for (int of = 0; of < Profile.HOURS; of++) {
      int hour = day * Profile.HOURS + of;
      sun[hour] = DOWN;
      List<SunAngles> parts = new ArrayList<>();
      double[] up = partInSun(of, times);
      if (up[1] > up[0] && direct[hour] + diffuse[hour] > 0) {
        sun[hour] = at(day, (up[0] + up[1]) / 2);
        for (int part = 0; part < PARTS; part++) {
          parts.add(at(day, up[0] + (part + 0.5) / PARTS * (up[1] - up[0])));
        }
      }
      suns.add(List.copyOf(parts));
    }
  }

  private SunAngles at(int day, double hourOfDay) {
    return SunPosition.atStandardTime(
        YEAR,
        day + 1,
        hourOfDay,
        station.timeZoneHours(),
        station.latitudeDeg(),
        station.longitudeDeg(),
        station.elevationM());
  }

  /**
   * Start and end of the longest part of an hour in which the sun is up, equal where it is down.
   * Far north the sun that rose the day before may still be up after midnight, and the next day's
   * may rise before.
   */
  private static double[] partInSun(int of, SunTimes times) {
    double[] longest = new double[2];
    for (int turn = -Profile.HOURS; turn <= Profile.HOURS; turn += Profile.HOURS) {
      double from = Math.max(of, times.sunriseHour() + turn);
      double to = Math.min(of + 1.0, times.sunsetHour() + turn);
      if (to - from > longest[1] - longest[0]) {
        longest = new double[] {from, to};
      }
    }
    return longest;
  }

  /**
   * The station.
   *
   * @return where the weather was observed
   */
  public Station station() {
    return station;
  }

  /**
   * Outdoor air.
   *
   * @param hour 0 to 8,759
   * @return mean dry bulb of the hour, °C
   */
  public double dryBulb(int hour) {
    return air[hour].dryBulb();
  }

  /**
   * Mean pressure of the year.
   *
   * @return Pa
   */
  public double pressure() {
    return pressure;
  }

  HourAir air(int hour) {
    return air[hour];
  }

  /** Sky temperature, °C. */
  double sky(int hour) {
    return sky[hour];
  }

  double direct(int hour) {
    return direct[hour];
  }

  double diffuse(int hour) {
    return diffuse[hour];
  }

  /** Where the sun stands; below the horizon where it gives no light. */
  SunAngles sun(int hour) {
    return sun[hour];
  }

  /** Where it stands in equal parts of the time in which it is up in that hour; empty if never. */
  List<SunAngles> suns(int hour) {
    return suns.get(hour);
  }

  GroundTemperature ground() {
    return ground;
  }

  /**
   * Month of an hour.
   *
   * @param hour 0 to 8,759
   * @return 1 to 12
   */
  public static int monthOf(int hour) {
    return date(hour / Profile.HOURS).getMonthValue();
  }

  static LocalDate date(int day) {
    return LocalDate.ofYearDay(YEAR, day + 1);
  }
}
