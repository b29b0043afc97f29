package org.shopclime.climate;

import java.time.LocalDate;
import org.shopclime.air.MoistAir;

/**
 * One day of outdoor air that repeats: temperature, moisture and wind of each hour, and what the
 * clear-sky model needs for its sun. The moisture would be the same all day; in hours cooler than
 * its dew point the air holds less and stands saturated (dew has fallen).
 *
 * @param station where
 * @param date the 21st of the month, in a year without a leap day
 * @param dryBulb mean temperature of each hour, °C
 * @param humidityRatio kg of water per kg of dry air in each hour
 * @param wetBulb wet bulb of each hour, °C
 * @param wind wind at the station's mast in each hour, m/s
 * @param pressure air pressure, Pa
 * @param dayHumidityRatio moisture of the hours that are not saturated, kg per kg of dry air
 * @param aerosol broadband aerosol depth of the month, 1
 * @param waterCm precipitable water of the month, cm
 * @param ground wave of the ground temperature
 */
public record HotDay(
    Station station,
    LocalDate date,
    Hours dryBulb,
    Hours humidityRatio,
    Hours wetBulb,
    Hours wind,
    double pressure,
    double dayHumidityRatio,
    double aerosol,
    double waterCm,
    GroundTemperature ground) {

  /** Refuses figures outside the usual ranges of weather. */
  public HotDay {
    Guard.within("dry bulb, °C", dryBulb.min(), -80, 80);
    Guard.within("dry bulb, °C", dryBulb.max(), -80, 80);
    Guard.within("wind, m/s", wind.min(), 0, 40);
    Guard.within("pressure, Pa", pressure, 55_000, 110_000);
    Guard.within("humidity ratio", dayHumidityRatio, 0, 0.1);
    Guard.within("aerosol depth", aerosol, 0, 1);
    Guard.within("water, cm", waterCm, 0, 12);
  }

  /**
   * Highest temperature of the day.
   *
   * @return dry bulb of the hottest hour, °C
   */
  public double peak() {
    return dryBulb.max();
  }

  /**
   * Hour of that.
   *
   * @return the first of equals, hour ending 1 to 24
   */
  public int peakHour() {
    int hour = 1;
    while (dryBulb.at(hour) < peak()) {
      hour++;
    }
    return hour;
  }

  /**
   * Dew point of outdoor air.
   *
   * @param hour hour ending 1 to 24
   * @return °C
   */
  public double dewPoint(int hour) {
    return MoistAir.dewPoint(humidityRatio.at(hour), pressure);
  }

  /**
   * Hours in which the air is saturated because the night is cooler than the day's dew point.
   *
   * @return number of hours, 0 to 24
   */
  public int saturatedHours() {
    int saturated = 0;
    for (int hour = 1; hour <= Hours.COUNT; hour++) {
      if (humidityRatio.at(hour) < dayHumidityRatio) {
        saturated++;
      }
    }
    return saturated;
  }

  /**
   * Mean of the year of the ground temperature.
   *
   * @return °C
   */
  public double groundMean() {
    return ground.annualMean();
  }
}
