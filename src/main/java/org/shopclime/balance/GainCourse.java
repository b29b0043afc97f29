package org.shopclime.balance;

import org.shopclime.gain.HeatGain;
import org.shopclime.gain.OvenBox;
import org.shopclime.gain.OvenDay;
import org.shopclime.shop.Gain;

/**
 * What a gain gives off through a day: its greatest heat, and how much of it goes on in each slot.
 *
 * @param full what it gives off while fully on
 * @param convective how much of the convective heat, and of the moisture, goes on
 * @param radiant how much of the radiant heat goes on
 */
record GainCourse(HeatGain full, DaySlots convective, DaySlots radiant) {

  /**
   * The course.
   *
   * @param gain the owner's gain
   * @param roomCelsius air temperature that it is given off to, °C
   * @param when its schedule on that day
   */
  static GainCourse of(Gain gain, double roomCelsius, DaySlots when) {
    if (gain instanceof Gain.Oven oven && oven.batches().isPresent()) {
      return batches(oven, OvenDays.of(oven, roomCelsius, when), when);
    }
    return new GainCourse(GainHeat.fullOn(gain, roomCelsius), when, when);
  }

  /** A hood takes warm air while it is meant to: when the oven is hot or a batch is in it. */
  private static GainCourse batches(Gain.Oven oven, OvenDay day, DaySlots when) {
    double[] convective = new double[DaySlots.COUNT];
    double[] radiant = new double[DaySlots.COUNT];
    double mostConvective = 0;
    double mostRadiant = 0;
    for (int slot = 0; slot < DaySlots.COUNT; slot++) {
      HeatGain heat = HeatGain.dry(day.given(slot), OvenBox.RADIANT_SHARE);
      double hood = oven.exhaust() * Math.max(when.at(slot) > 0 ? 1 : 0, day.use(slot));
      convective[slot] = heat.convective() * (1 - hood);
      radiant[slot] = heat.radiant();
      mostConvective = Math.max(mostConvective, convective[slot]);
      mostRadiant = Math.max(mostRadiant, radiant[slot]);
    }
    return new GainCourse(
        new HeatGain(mostConvective, mostRadiant, 0),
        parts(convective, mostConvective),
        parts(radiant, mostRadiant));
  }

  private static DaySlots parts(double[] watts, double most) {
    return DaySlots.of(watts).scaled(most > 0 ? 1 / most : 0);
  }

  /** Mean sensible heat of an hour ending 1 to 24, W. */
  double mean(int hour) {
    int first = (hour - 1) * DaySlots.PER_HOUR;
    return full.convective() * convective.mean(first, DaySlots.PER_HOUR)
        + full.radiant() * radiant.mean(first, DaySlots.PER_HOUR);
  }

  /** Sensible heat in a slot, W. */
  double sensible(int slot) {
    return full.convective() * convective.at(slot) + full.radiant() * radiant.at(slot);
  }
}
