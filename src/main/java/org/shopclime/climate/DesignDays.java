package org.shopclime.climate;

import org.shopclime.air.MoistAir;

/**
 * Lays out the days that decide: the hot day, the humid day, and the hot day moved up or down.
 *
 * <p>Source: ASHRAE Handbook - Fundamentals (2009), ch. 14: dry bulb = peak - range times the
 * hour's fraction; one humidity ratio all day, from the peak dry bulb and its coincident wet bulb;
 * where the night is cooler than that moisture allows, the air is saturated. We use the station's
 * own fractions, range and wind on its hot days, and the 21st of the month with most hours above
 * the level.
 *
 * <p>Error: the highest hour mean is set to the level, which belongs to single readings; a true
 * day's highest hour mean lies about 0.1 to 0.3 K below its highest reading.
 */
public final class DesignDays {
  private static final int DAY_OF_MONTH = 21;

  private DesignDays() {}

  /**
   * The hot day of a station.
   *
   * @param climate the station's climate
   * @param level how rare
   * @return the day; its hottest hour has the level's dry bulb and coincident wet bulb
   */
  public static HotDay hotDay(StationClimate climate, Level level) {
    HotPoint point = climate.at(level);
    double ratio =
        MoistAir.humidityRatioFromWetBulb(point.dryBulb(), point.wetBulb(), climate.pressure());
    return day(climate, point.month(), point.dryBulb(), climate.dailyRange(), ratio);
  }

  /**
   * The hot day of a station, moved to a peak that was typed; range, dew point and sun stay.
   *
   * @param climate the station's climate
   * @param level how rare
   * @param typedPeakC temperature of the hottest hour, °C, 0 to 60
   * @return the day
   * @throws IllegalArgumentException if the peak is outside that range or NaN
   */
  public static HotDay hotDay(StationClimate climate, Level level, double typedPeakC) {
    Guard.within("typed peak, °C", typedPeakC, 0, 60);
    HotDay day = hotDay(climate, level);
    return shifted(day, typedPeakC - day.peak());
  }

  /**
   * The humid day of a station: its dew point is passed in 0.4 % of hours; temperatures run as on
   * the days that reach it, in the shape of the station's hot days.
   *
   * @param climate the station's climate
   * @return the day
   */
  public static HotDay humidDay(StationClimate climate) {
    HumidPoint humid = climate.humid();
    double ratio = MoistAir.humidityRatioFromDewPoint(humid.dewPoint(), climate.pressure());
    return day(climate, humid.month(), humid.dayPeak(), humid.dayRange(), ratio);
  }

  /**
   * A day moved bodily: every hour warmer or cooler by the same, with its range, wind, sun and dew
   * point kept; hours cooler than the dew point are saturated.
   *
   * @param day the day
   * @param deltaK how much warmer, K, -60 to 60
   * @return the moved day; moving it back gives the day again
   * @throws IllegalArgumentException if the move or a temperature it makes is out of range or NaN
   */
  public static HotDay shifted(HotDay day, double deltaK) {
    Guard.within("move of the day, K", deltaK, -60, 60);
    Hours dryBulb = day.dryBulb().map(value -> value + deltaK);
    Hours ratio = capped(dryBulb, day.dayHumidityRatio(), day.pressure());
    return new HotDay(
        day.station(),
        day.date(),
        dryBulb,
        ratio,
        wetBulb(dryBulb, ratio, day.pressure()),
        day.wind(),
        day.pressure(),
        day.dayHumidityRatio(),
        day.aerosol(),
        day.waterCm(),
        day.ground());
  }

  private static HotDay day(
      StationClimate climate, int month, double peak, double range, double ratio) {
    double pressure = climate.pressure();
    Hours dryBulb = climate.shape().map(fraction -> peak - range * fraction);
    Hours capped = capped(dryBulb, ratio, pressure);
    return new HotDay(
        climate.station(),
        WeatherYear.dateOf(month, DAY_OF_MONTH),
        dryBulb,
        capped,
        wetBulb(dryBulb, capped, pressure),
        climate.hotDayWind(),
        pressure,
        ratio,
        climate.aerosol().depth().at(month),
        climate.waterCm().at(month),
        climate.ground());
  }

  private static Hours capped(Hours dryBulb, double ratio, double pressure) {
    return dryBulb.map(
        celsius -> Math.min(ratio, MoistAir.saturationHumidityRatio(celsius, pressure)));
  }

  private static Hours wetBulb(Hours dryBulb, Hours ratio, double pressure) {
    return Hours.from(hour -> MoistAir.wetBulb(dryBulb.at(hour), ratio.at(hour), pressure));
  }
}
