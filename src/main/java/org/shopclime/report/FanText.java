package org.shopclime.report;

import java.util.Locale;
import org.shopclime.plan.FanAnswer;
import org.shopclime.quantity.UnitSystem;

/** What a fan that runs on while the compressor rests does to the room, as a fact. */
final class FanText {

  private FanText() {}

  static String fact(FanAnswer fan, UnitSystem units) {
    FanAnswer.Effect runsOn = fan.runsOn();
    FanAnswer.Effect stopping = fan.stopping();
    return "Its fan runs on while the compressor rests and blows water off the coil back into the"
        + " room: the dampest working hour has "
        + Shown.percent(runsOn.humidity())
        + " humidity, the warmest is at "
        + Shown.temperature(runsOn.indoorPeak(), units)
        + ", for "
        + energy(runsOn)
        + " that day. With the fan stopping too it would be "
        + Shown.percent(stopping.humidity())
        + " and "
        + Shown.temperature(stopping.indoorPeak(), units)
        + ", for "
        + energy(stopping)
        + (stopping.energy() > runsOn.energy() ? ": drying the air takes power." : ".")
        + " How much water your coil holds is not known; this is a usual one.";
  }

  private static String energy(FanAnswer.Effect effect) {
    return String.format(Locale.ROOT, "%.1f kWh", effect.energy());
  }
}
