package org.shopclime.climate;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Map;
import org.shopclime.air.MoistAir;

/**
 * Finds heat that cannot be in a year's dry bulb: above 30 °C and more than 20 K above the middle
 * of the same hour on the 41 days around. Where such an hour fits within 10 K when read as °F it
 * was written in °F, and is put right with the hours beside it that are more than 12 K above and
 * fit too; otherwise it is missing. Sixteen files of the collection have such hours, one of them,
 * in Alaska, through nineteen days. A false spell of more than twenty days is its own middle and is
 * left to {@link WeatherSense}.
 */
final class FalseHeat {

  private static final double HOT_C = 30;
  private static final double ABOVE_K = 20;
  private static final double FITS_K = 10;
  private static final double WARM_K = 12;
  private static final int DAYS_BESIDE = 20;
  private static final int DAYS = WeatherYear.COUNT / Hours.COUNT;

  private final BitSet fahrenheit = new BitSet(WeatherYear.COUNT);
  private final BitSet impossible = new BitSet(WeatherYear.COUNT);

  /** Takes the arrays of a year in SI, not a number where a figure is missing, and mends them. */
  FalseHeat(Map<WeatherColumn, double[]> values) {
    double[] dryBulb = values.get(WeatherColumn.DRY_BULB);
    double[] written = dryBulb.clone();
    for (int at = 0; at < WeatherYear.COUNT; at++) {
      if (written[at] > HOT_C) {
        double usual = usual(written, at);
        if (written[at] > usual + ABOVE_K) {
          (fits(written[at], usual) ? fahrenheit : impossible).set(at);
        }
      }
    }
    spread(written, 1);
    spread(written, -1);
    fahrenheit.stream().forEach(at -> dryBulb[at] = celsius(written[at]));
    impossible.stream().forEach(at -> dryBulb[at] = Double.NaN);
    mendMoisture(values);
  }

  private static boolean fits(double written, double usual) {
    return Math.abs(celsius(written) - usual) <= FITS_K;
  }

  /** The cooler hours of a spell in °F: from hour to hour while they are warm and fit. */
  private void spread(double[] written, int step) {
    for (int i = 1; i < WeatherYear.COUNT; i++) {
      int at = step > 0 ? i : WeatherYear.COUNT - 1 - i;
      if (fahrenheit.get(at - step) && !impossible.get(at) && !fahrenheit.get(at)) {
        double usual = usual(written, at);
        fahrenheit.set(at, written[at] > usual + WARM_K && fits(written[at], usual));
      }
    }
  }

  /** A dew point that then lies above the air was written in °F too; humidity follows from both. */
  private void mendMoisture(Map<WeatherColumn, double[]> values) {
    double[] dryBulb = values.get(WeatherColumn.DRY_BULB);
    double[] dewPoint = values.get(WeatherColumn.DEW_POINT);
    double[] humidity = values.get(WeatherColumn.RELATIVE_HUMIDITY);
    fahrenheit.stream()
        .filter(at -> !Double.isNaN(dewPoint[at]))
        .forEach(
            at -> {
              if (dewPoint[at] > dryBulb[at]) {
                dewPoint[at] = Math.min(dryBulb[at], celsius(dewPoint[at]));
              }
              humidity[at] =
                  MoistAir.saturationPressure(dewPoint[at])
                      / MoistAir.saturationPressure(dryBulb[at]);
            });
  }

  private static double celsius(double fahrenheit) {
    return (fahrenheit - 32) / 1.8;
  }

  /** Middle of the same hour on the days around; the year is a circle. */
  private static double usual(double[] dryBulb, int at) {
    double[] same = new double[2 * DAYS_BESIDE + 1];
    int count = 0;
    for (int step = -DAYS_BESIDE; step <= DAYS_BESIDE; step++) {
      int day = Math.floorMod(at / Hours.COUNT + step, DAYS);
      double value = dryBulb[day * Hours.COUNT + at % Hours.COUNT];
      if (!Double.isNaN(value)) {
        same[count++] = value;
      }
    }
    Arrays.sort(same, 0, count);
    return same[count / 2];
  }

  /** Hours that were in °F, by place from 0. */
  BitSet fahrenheit() {
    return fahrenheit;
  }

  /** Hours now missing, by place from 0. */
  BitSet impossible() {
    return impossible;
  }
}
