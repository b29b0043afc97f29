package org.shopclime.report;

import org.shopclime.plan.DustAnswer;
import org.shopclime.quantity.UnitSystem;

/** What dust on coil and filter takes, and what brushing gives back, as a fact. */
final class DustText {

  private DustText() {}

  static String fact(DustAnswer dust, UnitSystem units) {
    DustAnswer.End best = dust.best();
    DustAnswer.End worst = dust.worst();
    return "With "
        + Shown.percent(dust.lostAirflow())
        + " of the air lost to dust on coil and filter it loses "
        + Shown.power(best.capacity(), units)
        + " (a clean coil with less air: NREL/TP-5500-56354) to "
        + Shown.power(worst.capacity(), units)
        + " (coils measured dirty: Ali and Ismail, 2008), and the warmest working hour is "
        + Shown.range(best.indoorPeak(), worst.indoorPeak(), units)
        + " in place of "
        + Shown.temperature(dust.clean(), units)
        + "; the same cooling takes "
        + percent(best.extraEnergy())
        + " to "
        + percent(worst.extraEnergy())
        + " more electricity. Brushing it out gives that back. How soon it is dusty again, your eyes"
        + " must tell: this does not reckon it.";
  }

  private static String percent(double share) {
    return Shown.percent(Math.max(0, share));
  }
}
