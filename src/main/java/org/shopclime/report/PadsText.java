package org.shopclime.report;

import org.shopclime.plan.PadsAnswer;
import org.shopclime.quantity.Kind;
import org.shopclime.quantity.Quantities;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.quantity.Units;
import org.shopclime.run.Trace;

/** What an evaporative cooler does, as a fact. */
final class PadsText {

  private PadsText() {}

  static String fact(PadsAnswer pads, Trace trace, UnitSystem units) {
    double hours = 0;
    for (int hour = 1; hour <= 24; hour++) {
      hours += trace.running().at(hour);
    }
    return "It blows in "
        + Quantities.show(Kind.AIR_FLOW, pads.airflow(), units)
        + "; when outdoors is "
        + Shown.temperature(pads.outdoor(), units)
        + " that air is "
        + Shown.temperature(pads.supply(), units)
        + ". Humidity in the room reaches "
        + Shown.percent(pads.humidity())
        + " in working hours ("
        + Shown.percent(pads.humidityWithout())
        + " without it). It runs "
        + Math.round(hours)
        + " h that day and uses "
        + (units == UnitSystem.SI
            ? Math.round(pads.water()) + " L"
            : Math.round(Units.gallons(pads.water() / 1000)) + " gal")
        + " of water, what is bled off against scale among it. Sizes told beside it are those of"
        + " window units.";
  }
}
