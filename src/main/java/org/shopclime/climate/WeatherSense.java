package org.shopclime.climate;

import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntPredicate;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.shopclime.air.MoistAir;
import org.shopclime.sun.SunPosition;

/**
 * Whether a year of hours can be true of its station. It finds columns under the wrong head, hours
 * that are shifted, a wrong zone, longitude or elevation, temperatures in another unit.
 *
 * <p>Limits lie beyond all 1,020 files of the collection: each names the farthest of them.
 */
final class WeatherSense {
  /** Nenana, Alaska: 14 K. */
  private static final double MONTH_K = 18;

  /** Means of a year lie from -13 °C (Barrow) to 28 °C (Guam); the world's hottest is 34 °C. */
  private static final double MIDDLE_C = 5;

  private static final double HALF_RANGE_K = 30;

  /** Bettles Field, Alaska: 2.3 %. */
  private static final double DEW_PART = 0.1;

  private static final double DEW_K = 1;

  /** Gulkana, Alaska: 3.7 points. */
  private static final double HUMIDITY = 0.1;

  /** No file has such hours at all. */
  private static final double OPAQUE_PART = 0.01;

  /**
   * Mean change in an hour by the mean: 6 % at Alamosa, Colorado; of the wind it is 8 % or more.
   */
  private static final double WATER_CHANGE = 0.07;

  /** Kona, Hawaii: 0.19. */
  private static final double AEROSOL_DEPTH = 0.5;

  /** Gambell, Alaska: 2.5 h. */
  private static final double ZONE_H = 3;

  /** Rock Springs, Wyoming: 12 %, its elevation being wrong in the file; the next 4 %. */
  private static final double PRESSURE_PART = 0.15;

  private static final double PRESSURE_NOTED = 0.05;

  /** Cold Bay, Alaska: 1.9 h; all but eight files lie within 0.5 h. */
  private static final double NOON_H = 2.5;

  private static final double NOON_NOTED_H = 0.75;

  /** Honolulu: 10 %. */
  private static final double CLOSURE_PART = 0.2;

  /** Cold Bay: 7 % of such hours. */
  private static final double NIGHT_PART = 0.1;

  private static final double NIGHT_W_M2 = 10;

  /** In the middle of an hour; lower, and the sun is down from the hour's beginning to its end. */
  private static final double NIGHT_DEG = -8;

  /** Barrow: 90 W/m². */
  private static final double LEAST_SUN = 30;

  /** Every fifth day is enough for the sun. */
  private static final int DAY_STEP = 5;

  /** What cannot be, and what would be true instead. */
  record Doubt(String found, String takes) {}

  private final WeatherYear year;
  private final Station station;
  private final List<Doubt> doubts = new ArrayList<>();
  private final List<String> notes = new ArrayList<>();

  WeatherSense(WeatherYear year) {
    this.year = year;
    this.station = year.station();
    checkZone();
    checkPressure();
    checkMonths();
    checkMoisture();
    checkCloud();
    checkClearAir();
    if (doubts.isEmpty()) {
      checkSun();
    }
  }

  /** What speaks against the year. */
  List<Doubt> doubts() {
    return List.copyOf(doubts);
  }

  /** What is odd but taken, a sentence each. */
  List<String> notes() {
    return List.copyOf(notes);
  }

  private void doubt(String takes, String found, Object... figures) {
    doubts.add(new Doubt(String.format(Locale.ROOT, found, figures), takes));
  }

  private void checkZone() {
    double off = Math.IEEEremainder(station.timeZoneHours() - station.longitudeDeg() / 15, 24);
    if (Math.abs(off) > ZONE_H) {
      doubt(
          "hours from universal time that fit the longitude, west negative",
          "time zone %.1f h at longitude %.1f",
          station.timeZoneHours(),
          station.longitudeDeg());
    }
  }

  private void checkPressure() {
    double mean = mean(year::pressure);
    double usual = MoistAir.standardPressure(station.elevationM());
    double off = Math.abs(mean / usual - 1);
    if (off > PRESSURE_PART) {
      doubt(
          "elevation and pressure that fit",
          "a mean pressure of %.0f mbar at an elevation of %.0f m",
          mean / 100,
          station.elevationM());
    } else if (off > PRESSURE_NOTED) {
      notes.add(
          String.format(
              Locale.ROOT,
              "the mean pressure, %.0f mbar, does not belong to the elevation told, %.0f m; the"
                  + " pressure is used",
              mean / 100,
              station.elevationM()));
    }
  }

  private void checkMonths() {
    Months means = StationStatistics.monthly(year, year::dryBulb);
    if (!(Math.abs(means.mean() - MIDDLE_C) <= HALF_RANGE_K)) {
      doubt(
          "°C; no place on earth has such a mean",
          "a mean %s of %.0f",
          WeatherColumn.DRY_BULB.header(),
          means.mean());
      return;
    }
    for (int month = 1; month <= Months.COUNT; month++) {
      double before = means.at((month + 10) % Months.COUNT + 1);
      double after = means.at(month % Months.COUNT + 1);
      double off = means.at(month) - (before + after) / 2;
      if (Math.abs(off) > MONTH_K) {
        doubt(
            "a month at most " + (int) MONTH_K + " K off the middle of those beside it",
            "%s %.0f K off the months beside it in %s",
            Month.of(month).getDisplayName(TextStyle.FULL, Locale.ENGLISH),
            Math.abs(off),
            WeatherColumn.DRY_BULB.header());
      }
    }
  }

  private void checkMoisture() {
    long above = count(hour -> year.dewPoint(hour) > year.dryBulb(hour) + DEW_K);
    if (above > DEW_PART * WeatherYear.COUNT) {
      doubt(
          "a dew point not above the dry bulb",
          "the dew point above the dry bulb in %d hours",
          above);
      return;
    }
    double off = mean(hour -> Math.abs(humidity(hour) - year.relativeHumidity(hour)));
    if (!(off <= HUMIDITY)) {
      doubt(
          "a relative humidity that fits dry bulb and dew point",
          "a relative humidity %.0f points off in the mean",
          100 * off);
    }
  }

  private double humidity(int hour) {
    return Math.min(1, vapour(year.dewPoint(hour)) / vapour(year.dryBulb(hour)));
  }

  /** Over water, as observers reckon relative humidity in frost too; Magnus form, to 1 %. */
  private static double vapour(double celsius) {
    return Math.exp(17.62 * celsius / (243.12 + celsius));
  }

  private void checkCloud() {
    long more = count(hour -> year.opaqueCloud(hour) > year.totalCloud(hour) + 0.05);
    if (more > OPAQUE_PART * WeatherYear.COUNT) {
      doubt("opaque cloud within all cloud", "more opaque cloud than cloud in %d hours", more);
    }
  }

  private void checkClearAir() {
    double change =
        IntStream.range(1, WeatherYear.COUNT)
            .mapToDouble(
                hour ->
                    Math.abs(year.precipitableWaterCm(hour + 1) - year.precipitableWaterCm(hour)))
            .average()
            .orElseThrow();
    double water = mean(year::precipitableWaterCm);
    if (!(change <= WATER_CHANGE * water)) {
      doubt(
          "water that changes slowly",
          "%s of %.2f that changes by %.2f an hour",
          WeatherColumn.WATER.header(),
          water,
          change);
    }
    double aerosol = mean(year::aerosol);
    if (!(aerosol <= AEROSOL_DEPTH)) {
      doubt("an aerosol depth of broadband sun", "a mean aerosol depth of %.2f", aerosol);
    }
  }

  private void checkSun() {
    double global = 0;
    double solarHours = 0;
    double off = 0;
    int nights = 0;
    int lit = 0;
    for (int hour = 1; hour <= WeatherYear.COUNT; hour++) {
      int day = WeatherYear.dayOf(hour);
      if (day % DAY_STEP != 0) {
        continue;
      }
      double middle = WeatherYear.hourEnding(hour) - 0.5;
      double altitude = altitude(day, middle);
      double level = year.globalHorizontal(hour);
      double sum =
          year.directNormal(hour) * Math.max(0, Math.sin(Math.toRadians(altitude)))
              + year.diffuseHorizontal(hour);
      double solar = middle + station.longitudeDeg() / 15 - station.timeZoneHours();
      global += level;
      solarHours += level * Math.IEEEremainder(solar - 12, Hours.COUNT);
      off += Math.abs(level - sum);
      nights += altitude < NIGHT_DEG ? 1 : 0;
      lit += altitude < NIGHT_DEG && level > NIGHT_W_M2 ? 1 : 0;
    }
    if (global < LEAST_SUN * WeatherYear.COUNT / DAY_STEP) {
      doubt("sunshine in W/m2", "hardly any sun in %s", WeatherColumn.GLOBAL.header());
      return;
    }
    double noon = solarHours / global;
    if (Math.abs(noon) > NOON_H || lit > NIGHT_PART * nights) {
      doubt(
          "hours of local standard time, and the zone and longitude they belong to",
          "sun at night: its middle lies %.1f h from noon, and %d of %d nightly hours have some",
          noon,
          lit,
          nights);
    } else if (off > CLOSURE_PART * global) {
      doubt(
          "global, direct and diffuse sun that fit each other",
          "sun whose parts miss the whole by %.0f %%",
          100 * off / global);
    } else if (Math.abs(noon) > NOON_NOTED_H) {
      notes.add(
          String.format(
              Locale.ROOT,
              "the sun's day lies %.1f h %s for this zone and longitude",
              Math.abs(noon),
              noon < 0 ? "early" : "late"));
    }
  }

  private double altitude(int day, double hour) {
    return SunPosition.atStandardTime(
            WeatherYear.COMMON_YEAR,
            day,
            hour,
            station.timeZoneHours(),
            station.latitudeDeg(),
            station.longitudeDeg(),
            station.elevationM())
        .altitudeDeg();
  }

  private static long count(IntPredicate counts) {
    return IntStream.rangeClosed(1, WeatherYear.COUNT).filter(counts).count();
  }

  private static double mean(IntToDoubleFunction value) {
    return IntStream.rangeClosed(1, WeatherYear.COUNT).mapToDouble(value).average().orElseThrow();
  }
}
