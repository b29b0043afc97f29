package org.shopclime.climate;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.IntToDoubleFunction;

/** A year made for a test: mild, windless and dark unless told otherwise. */
final class MadeYear {
  static final Station PLACE = new Station("999990", "Testing Field", "ZZ", -6, 35.0, -90.0, 100);

  private final Map<WeatherColumn, double[]> values = new EnumMap<>(WeatherColumn.class);
  private Station station = PLACE;

  MadeYear() {
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

  MadeYear at(Station place) {
    station = place;
    return this;
  }

  WeatherYear year() {
    return new WeatherYear(station, values);
  }
}
