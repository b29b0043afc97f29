package org.shopclime.climate;

import java.time.LocalDate;
import java.util.Map;

/**
 * A typical year of 8,760 hours at one station. Hours of the year run from 1 (ending 01:00 on 1
 * January) to 8,760; there is no 29 February. Irradiances are means over the hour before, all else
 * is at the hour's end. Each month may come from another calendar year. Unchangeable.
 */
public final class WeatherYear {
  /** Hours in the year. */
  public static final int COUNT = 8760;

  /** A year without a leap day, to name days by. */
  static final int COMMON_YEAR = 2025;

  private final Station station;
  private final Map<WeatherColumn, double[]> values;

  /** Takes the arrays as its own: by column, then hour. */
  WeatherYear(Station station, Map<WeatherColumn, double[]> values) {
    this.station = station;
    this.values = values;
  }

  /**
   * Where the year was observed.
   *
   * @return the station
   */
  public Station station() {
    return station;
  }

  /**
   * The day an hour belongs to.
   *
   * @param hourOfYear 1 to 8,760; the hour ending 24:00 belongs to the day it ends
   * @return day of the year, 1 to 365
   * @throws IllegalArgumentException if the hour is outside its range
   */
  public static int dayOf(int hourOfYear) {
    return (Guard.within("hour of the year", hourOfYear, 1, COUNT) - 1) / Hours.COUNT + 1;
  }

  /**
   * The month an hour belongs to.
   *
   * @param hourOfYear 1 to 8,760
   * @return month, 1 to 12
   * @throws IllegalArgumentException if the hour is outside its range
   */
  public static int monthOf(int hourOfYear) {
    return dateOf(dayOf(hourOfYear)).getMonthValue();
  }

  /** The date of a day of a year without a leap day. */
  static LocalDate dateOf(int dayOfYear) {
    return LocalDate.ofYearDay(COMMON_YEAR, dayOfYear);
  }

  /** A date in the year without a leap day that design days are laid in. */
  static LocalDate dateOf(int month, int dayOfMonth) {
    return LocalDate.of(COMMON_YEAR, month, dayOfMonth);
  }

  /** The hour of the day an hour of the year is. */
  static int hourEnding(int hourOfYear) {
    return (hourOfYear - 1) % Hours.COUNT + 1;
  }

  /**
   * Sun on a level surface.
   *
   * @param hourOfYear 1 to 8,760
   * @return mean global horizontal irradiance of the hour, W/m²
   * @throws IllegalArgumentException if the hour is outside its range
   */
  public double globalHorizontal(int hourOfYear) {
    return at(WeatherColumn.GLOBAL, hourOfYear);
  }

  /**
   * Sun on a surface facing it.
   *
   * @param hourOfYear 1 to 8,760
   * @return mean direct normal irradiance of the hour, W/m²
   * @throws IllegalArgumentException if the hour is outside its range
   */
  public double directNormal(int hourOfYear) {
    return at(WeatherColumn.DIRECT_NORMAL, hourOfYear);
  }

  /**
   * Sky light on a level surface.
   *
   * @param hourOfYear 1 to 8,760
   * @return mean diffuse horizontal irradiance of the hour, W/m²
   * @throws IllegalArgumentException if the hour is outside its range
   */
  public double diffuseHorizontal(int hourOfYear) {
    return at(WeatherColumn.DIFFUSE, hourOfYear);
  }

  /**
   * All cloud.
   *
   * @param hourOfYear 1 to 8,760
   * @return part of the sky covered, 0 to 1
   * @throws IllegalArgumentException if the hour is outside its range
   */
  public double totalCloud(int hourOfYear) {
    return at(WeatherColumn.TOTAL_CLOUD, hourOfYear);
  }

  /**
   * Cloud that cannot be seen through.
   *
   * @param hourOfYear 1 to 8,760
   * @return part of the sky covered, 0 to 1
   * @throws IllegalArgumentException if the hour is outside its range
   */
  public double opaqueCloud(int hourOfYear) {
    return at(WeatherColumn.OPAQUE_CLOUD, hourOfYear);
  }

  /**
   * Temperature of the air.
   *
   * @param hourOfYear 1 to 8,760
   * @return dry bulb, °C
   * @throws IllegalArgumentException if the hour is outside its range
   */
  public double dryBulb(int hourOfYear) {
    return at(WeatherColumn.DRY_BULB, hourOfYear);
  }

  /**
   * Temperature at which dew forms.
   *
   * @param hourOfYear 1 to 8,760
   * @return dew point, °C
   * @throws IllegalArgumentException if the hour is outside its range
   */
  public double dewPoint(int hourOfYear) {
    return at(WeatherColumn.DEW_POINT, hourOfYear);
  }

  /**
   * Relative humidity.
   *
   * @param hourOfYear 1 to 8,760
   * @return relative humidity, 0 to 1
   * @throws IllegalArgumentException if the hour is outside its range
   */
  public double relativeHumidity(int hourOfYear) {
    return at(WeatherColumn.RELATIVE_HUMIDITY, hourOfYear);
  }

  /**
   * Pressure at the station.
   *
   * @param hourOfYear 1 to 8,760
   * @return pressure, Pa
   * @throws IllegalArgumentException if the hour is outside its range
   */
  public double pressure(int hourOfYear) {
    return at(WeatherColumn.PRESSURE, hourOfYear);
  }

  /**
   * Wind at the station's mast.
   *
   * @param hourOfYear 1 to 8,760
   * @return wind speed, m/s
   * @throws IllegalArgumentException if the hour is outside its range
   */
  public double windSpeed(int hourOfYear) {
    return at(WeatherColumn.WIND_SPEED, hourOfYear);
  }

  /**
   * Water in the whole air above the station.
   *
   * @param hourOfYear 1 to 8,760
   * @return precipitable water, cm
   * @throws IllegalArgumentException if the hour is outside its range
   */
  public double precipitableWaterCm(int hourOfYear) {
    return at(WeatherColumn.WATER, hourOfYear);
  }

  /**
   * Dust and haze in the air above the station, over the whole solar spectrum.
   *
   * @param hourOfYear 1 to 8,760
   * @return broadband aerosol depth, 1; zero in every hour means that it is missing
   * @throws IllegalArgumentException if the hour is outside its range
   */
  public double aerosol(int hourOfYear) {
    return at(WeatherColumn.AEROSOL, hourOfYear);
  }

  /**
   * Part of the sun the ground throws back.
   *
   * @param hourOfYear 1 to 8,760
   * @return albedo, 0 to 1; zero in every hour means that it is missing
   * @throws IllegalArgumentException if the hour is outside its range
   */
  public double albedo(int hourOfYear) {
    return at(WeatherColumn.ALBEDO, hourOfYear);
  }

  /**
   * Whether the file tells the aerosol depth: at some stations it is zero in every hour.
   *
   * @return true if any hour has an aerosol depth above zero
   */
  public boolean hasAerosol() {
    for (int hour = 1; hour <= COUNT; hour++) {
      if (aerosol(hour) > 0) {
        return true;
      }
    }
    return false;
  }

  /** Any figure in SI. */
  double at(WeatherColumn column, int hourOfYear) {
    return values.get(column)[Guard.within("hour of the year", hourOfYear, 1, COUNT) - 1];
  }
}
