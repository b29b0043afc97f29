package org.shopclime.report;

import java.util.Locale;
import org.shopclime.plan.DrierAnswer;
import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Quantities;
import org.shopclime.quantity.UnitSystem;

/** What a dehumidifier does, as a fact. */
final class DrierText {

  private static final double DAY = 86_400;

  private DrierText() {}

  static String fact(DrierAnswer drier, UnitSystem units) {
    DrierAnswer.Effect with = drier.with();
    DrierAnswer.Effect without = drier.without();
    return "The dehumidifier takes out "
        + Quantities.show(Kind.WATER_FLOW, drier.water() / DAY, units)
        + " and draws "
        + kwh(drier.energy())
        + " that day: humidity is "
        + Shown.percent(with.meanHumidity())
        + " in the mean and "
        + Shown.percent(with.humidity())
        + " at most, without it "
        + Shown.percent(without.meanHumidity())
        + " and "
        + Shown.percent(without.humidity())
        + ". What it draws and the heat of the water stay in the room: the warmest working hour is "
        + Shown.temperature(with.indoorPeak(), units)
        + ", without it "
        + Shown.temperature(without.indoorPeak(), units)
        + (without.unitEnergy() > 0
            ? "; the unit draws "
                + kwh(with.unitEnergy())
                + ", without it "
                + kwh(without.unitEnergy())
            : "")
        + ".";
  }

  private static String kwh(double energy) {
    return String.format(Locale.US, "%.1f kWh", energy);
  }
}
