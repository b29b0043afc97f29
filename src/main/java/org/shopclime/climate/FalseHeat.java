package org.shopclime.climate;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Map;
import org.shopclime.air.MoistAir;

/**
 * Finds heat that cannot be in a year's dry bulb: above 30 °C and more than 20 K above the middle
 * of the same hour on the 41 days around. Where such an hour fits within 10 K when read as °F it
 * was written in °F, and is put right; otherwise it is missing. Sixteen files of the collection
 * have such hours, one of them, in Alaska, through nineteen days. A false spell of more than twenty
 * days is its own middle and is left to {@link WeatherSense}.
 */
final class FalseHeat {

  private static final double HOT_C = 30;
  private static final double ABOVE_K = 20;
  private static final double FITS_K = 10;
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
        double celsius = celsius(written[at]);
        if (written[at] > usual + ABOVE_K) {
          boolean fits = Math.abs(celsius - usual) <= FITS_K;
          (fits ? fahrenheit : impossible).set(at);
          dryBulb[at] = fits ? celsius : Double.NaN;
        }
      }
    }
    mendMoisture(values);
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
