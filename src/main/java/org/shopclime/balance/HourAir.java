package org.shopclime.balance;

import org.shopclime.air.MoistAir;

/**
 * Outdoor air of one hour.
 *
 * @param dryBulb mean temperature, °C
 * @param humidityRatio kg of water per kg of dry air
 * @param pressure Pa
 * @param wind wind at the station's mast, m/s
 * @param dryAirDensity dry air in a cubic metre, kg
 */
record HourAir(
    double dryBulb, double humidityRatio, double pressure, double wind, double dryAirDensity) {

  HourAir(double dryBulb, double humidityRatio, double pressure, double wind) {
    this(
        dryBulb,
        humidityRatio,
        pressure,
        wind,
        MoistAir.dryAirDensity(dryBulb, humidityRatio, pressure));
  }
}
