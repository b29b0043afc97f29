package org.shopclime.climate;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.IntToDoubleFunction;

/** A year made for a test: mild, windless and dark unless told otherwise. */
public final class MadeYear {
  /** A place on the middle meridian of its zone. */
  public static final Station PLACE =
      new Station("999990", "Testing Field", "ZZ", -6, 35.0, -90.0, 100);

  private final Map<WeatherColumn, double[]> values = new EnumMap<>(WeatherColumn.class);
  private Station station = PLACE;

  /** The mild year. */
  public MadeYear() {
    for (WeatherColumn column : WeatherColumn.values()) {
      values.put(column, new double[WeatherYear.COUNT]);
    }
    with(WeatherColumn.PRESSURE, hour -> 100_000);
    with(WeatherColumn.DRY_BULB, hour -> 20);
    with(WeatherColumn.DEW_POINT, hour -> 10);
    with(WeatherColumn.RELATIVE_HUMIDITY, hour -> 0.53);
    with(WeatherColumn.WATER, hour -> 2);
  }

  MadeYear with(WeatherColumn column, IntToDoubleFunction ofHour) {
    for (int hour = 1; hour <= WeatherYear.COUNT; hour++) {
      values.get(column)[hour - 1] = ofHour.applyAsDouble(hour);
    }
    return this;
  }

  /** Temperature at each hour's end, °C. */
  public MadeYear dryBulb(IntToDoubleFunction ofHour) {
    return with(WeatherColumn.DRY_BULB, ofHour);
  }

  /** Dew point at each hour's end, °C. */
  public MadeYear dewPoint(IntToDoubleFunction ofHour) {
    return with(WeatherColumn.DEW_POINT, ofHour);
  }

  /** Pressure, Pa. */
  public MadeYear pressure(double pressure) {
    return with(WeatherColumn.PRESSURE, hour -> pressure);
  }

  /** Wind, m/s. */
  public MadeYear wind(IntToDoubleFunction ofHour) {
    return with(WeatherColumn.WIND_SPEED, ofHour);
  }

  /** Opaque cloud, part of the sky. */
  public MadeYear cloud(IntToDoubleFunction ofHour) {
    return with(WeatherColumn.OPAQUE_CLOUD, ofHour);
  }

  /** Sun: direct normal and diffuse horizontal, W/m². */
  public MadeYear sun(IntToDoubleFunction direct, IntToDoubleFunction diffuse) {
    return with(WeatherColumn.DIRECT_NORMAL, direct).with(WeatherColumn.DIFFUSE, diffuse);
  }

  /** At another place. */
  public MadeYear at(Station place) {
    station = place;
    return this;
  }

  /** The year. */
  public WeatherYear year() {
    return new WeatherYear(station, values);
  }
}
