package org.shopclime.report;

import java.util.Locale;
import org.shopclime.gain.HeatGain;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.quantity.Units;
import org.shopclime.run.Trace;
import org.shopclime.shop.CoolingUnit;
import org.shopclime.shop.Shop;

/** Water that the unit's coil takes out of the air, which an owner can weigh in a bucket. */
final class CoilWater {

  private static final double SECONDS = 86_400;

  private static final double PINTS_PER_GALLON = 8;

  /** Less than this is not told, kg. */
  private static final double LEAST = 0.25;

  private static final double LITRES = 1000;

  private CoilWater() {}

  /** Of a day, kg; its latent heat over the heat of evaporation. */
  static double kilograms(Trace trace) {
    return Math.max(0, trace.latent().mean()) * SECONDS / HeatGain.EVAPORATION;
  }

  /** One sentence after another; empty where there is little or no coil. */
  static String told(Shop shop, Trace trace, UnitSystem units) {
    boolean pads = shop.unit().map(CoolingUnit::isEvaporative).orElse(true);
    double water = kilograms(trace);
    if (pads || water < LEAST) {
      return "";
    }
    String much =
        units == UnitSystem.SI
            ? String.format(Locale.ROOT, "%.1f liters", water)
            : Math.round(Units.gallons(water / LITRES) * PINTS_PER_GALLON) + " pints";
    return " About "
        + much
        + " of water come off its coil: a bucket under its drain tells, unless it blows the water out.";
  }
}
