package org.shopclime.plan;

import java.util.OptionalDouble;
import org.shopclime.bill.Course;
import org.shopclime.bill.Outlook;

/**
 * What a change of the shop saves and how long it takes to pay for itself: the year run whole with
 * it and without.
 *
 * @param name the change as it is told
 * @param cost $ to buy it
 * @param savedKwh electricity a year less, kWh; below 0 where more is drawn
 * @param saved $ a year less
 * @param hotWorkHours working hours a year above 85 °F after it, in the room told first
 */
public record Payback(
    String name, double cost, double savedKwh, double saved, double hotWorkHours) {

  /**
   * Simple payback at today's prices.
   *
   * @return years; nothing where nothing is saved
   */
  public OptionalDouble years() {
    return Course.simplePayback(cost, saved);
  }

  /**
   * Simple payback where every price is some other.
   *
   * @param factor what prices are multiplied by, above 0
   * @return years; nothing where nothing is saved
   */
  public OptionalDouble years(double factor) {
    return Course.simplePayback(cost, factor * saved);
  }

  /**
   * What is gained over the years looked at.
   *
   * @param outlook what is taken of prices to come
   * @return savings less cost in money of today, $; below 0 where it does not pay
   */
  public double gain(Outlook outlook) {
    return outlook.worthOfAll(saved) - cost;
  }
}
