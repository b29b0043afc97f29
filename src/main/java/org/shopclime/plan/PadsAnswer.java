package org.shopclime.plan;

import java.util.Optional;
import org.shopclime.climate.HotDay;
import org.shopclime.run.Cooling;
import org.shopclime.run.LivedDay;
import org.shopclime.run.Trace;
import org.shopclime.shop.CoolingUnit;
import org.shopclime.shop.Pads;
import org.shopclime.shop.Shop;

/**
 * What an evaporative cooler does to a shop on its hot day.
 *
 * <p>The rule by which it is doubted: an outdoor dew point of 55 °F or more. It is common practice
 * in the dry Southwest, where the weather service counted its humid season by that figure until
 * 2008 (from memory), as coolers disappoint above it.
 *
 * @param airflow air blown in, m³/s
 * @param supply air behind the pads in the hottest hour of the day, °C
 * @param outdoor outdoor air then, °C
 * @param outdoorDewPoint highest outdoor dew point in judged hours, °C
 * @param humidity highest relative humidity of the room in judged hours, 0 to 1
 * @param humidityWithout the same without the cooler
 * @param water water drawn from the tap through the day, kg
 * @param wished wished temperature, °C
 */
public record PadsAnswer(
    double airflow,
    double supply,
    double outdoor,
    double outdoorDewPoint,
    double humidity,
    double humidityWithout,
    double water,
    double wished) {

  /** Outdoor dew point from which a cooler is doubted, °C (55 °F). */
  public static final double HUMID = (55 - 32) / 1.8;

  /** Relative humidity above which iron rusts and mold may grow (EPA mold guidance: 60 %). */
  public static final double DAMP = 0.6;

  /**
   * The same of a shop.
   *
   * @param shop the shop
   * @param core its hot day
   * @return nothing without such a cooler, or where nothing is asked of it
   */
  public static Optional<PadsAnswer> of(Shop shop, CoreAnswer core) {
    return core.unit()
        .filter(day -> !day.judged().isEmpty())
        .flatMap(
            day -> shop.unit().flatMap(CoolingUnit::pads).map(pads -> of(shop, core, day, pads)))
        .filter(told -> shop.unit().orElseThrow().isEvaporative());
  }

  private static PadsAnswer of(Shop shop, CoreAnswer core, LivedDay day, Pads pads) {
    HotDay hot = core.hotDay();
    Cooling cooling = Sizing.cooling(shop).orElseThrow();
    int hottest = hot.peakHour();
    double dewPoint = Double.NEGATIVE_INFINITY;
    double water = 0;
    for (int hour = 1; hour <= 24; hour++) {
      if (day.judged().contains(hour)) {
        dewPoint = Math.max(dewPoint, hot.dewPoint(hour));
      }
      water +=
          3600
              * day.trace().running().at(hour)
              * cooling.waterUsed(
                  hot.dryBulb().at(hour), hot.humidityRatio().at(hour), hot.pressure());
    }
    return new PadsAnswer(
        shop.unit().orElseThrow().airflow().likely() * pads.airflow(),
        cooling.supplyTemperature(
            hot.dryBulb().at(hottest), hot.humidityRatio().at(hottest), hot.pressure()),
        hot.dryBulb().at(hottest),
        dewPoint,
        humidity(day.trace(), day),
        humidity(core.without().trace(), day),
        water,
        day.setPoint());
  }

  private static double humidity(Trace trace, LivedDay judged) {
    return judged.judged().stream().mapToDouble(trace.relativeHumidity()::at).max().orElseThrow();
  }

  /**
   * Whether the rule doubts it.
   *
   * @return true where outdoors is as humid as {@link #HUMID}
   */
  public boolean isDoubted() {
    return outdoorDewPoint >= HUMID;
  }
}
