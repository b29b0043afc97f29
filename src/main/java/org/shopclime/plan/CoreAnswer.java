package org.shopclime.plan;

import java.util.Optional;
import org.shopclime.climate.HotDay;
import org.shopclime.load.ShopLoad;
import org.shopclime.run.LivedDay;

/**
 * The answer's heart: the hot day, the loads, and the room with and without its unit.
 *
 * @param hotDay the day
 * @param room index of the room that is told
 * @param load loads by component
 * @param unit the day with the shop's unit, if it has one
 * @param without the day without any unit
 */
public record CoreAnswer(
    HotDay hotDay, int room, ShopLoad load, Optional<LivedDay> unit, LivedDay without) {

  /**
   * Highest room temperature: in judged hours with the unit if there is one, else of the whole day.
   *
   * @return °C
   */
  public double indoorPeak() {
    return unit.orElse(without).peakTemperature();
  }
}
