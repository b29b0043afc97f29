package org.shopclime.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shopclime.shop.Warning;

/** What should stand beside the figures of an evaporative cooler. */
final class PadsWords {

  private PadsWords() {}

  static List<Warning> warnings(PadsAnswer pads) {
    List<Warning> warnings = new ArrayList<>();
    if (pads.isDoubted()) {
      warnings.add(
          new Warning(
              "unit.kind",
              "This air is humid for an evaporative cooler: the outdoor dew point reaches "
                  + temperature(pads.outdoorDewPoint())
                  + " in working hours, and from "
                  + temperature(PadsAnswer.HUMID)
                  + " on such coolers disappoint (common practice in the dry Southwest). At its"
                  + " hottest the air it blows in is "
                  + temperature(pads.supply())
                  + (pads.supply() > pads.wished()
                      ? ", warmer than the wished "
                          + temperature(pads.wished())
                          + ": no airflow reaches that."
                      : ".")));
    } else if (pads.supply() > pads.wished()) {
      warnings.add(
          new Warning(
              "unit.kind",
              "At its hottest the air this cooler blows in is "
                  + temperature(pads.supply())
                  + ", warmer than the wished "
                  + temperature(pads.wished())
                  + ": no airflow reaches that."));
    }
    if (pads.humidity() > PadsAnswer.DAMP) {
      warnings.add(
          new Warning(
              "unit.kind",
              String.format(
                  Locale.US,
                  "It makes the room damp: %.0f %% humidity in working hours, %.0f %% without it."
                      + " Above 60 %% iron rusts and mold may grow (EPA mold guidance).",
                  100 * pads.humidity(),
                  100 * pads.humidityWithout())));
    }
    warnings.add(
        new Warning(
            "unit.pads",
            "As much air as it blows in must go out: leave a window or door open, and never run it"
                + " beside an air conditioner."));
    return warnings;
  }

  private static String temperature(double celsius) {
    return String.format(Locale.US, "%.0f °F (%.0f °C)", celsius * 1.8 + 32, celsius);
  }
}
