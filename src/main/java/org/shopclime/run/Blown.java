package org.shopclime.run;

import org.shopclime.air.MoistAir;

/**
 * Outdoor air that a cooler blows into its room through wet pads, running all the time; as much
 * room air leaves by an open window.
 *
 * @param dryAir its flow, kg of dry air a second; 0 where it must stand, as the pads would freeze
 * @param dryBulb °C
 * @param humidityRatio kg/kg
 * @param waterUsed water drawn from the tap, kg/s
 */
record Blown(double dryAir, double dryBulb, double humidityRatio, double waterUsed) {

  /** Nothing. */
  static final Blown NOTHING = new Blown(0, 0, 0, 0);

  /** Flow times specific heat of a part of it, W/K. */
  double conductance(double share) {
    return share * dryAir * MoistAir.humidHeat(humidityRatio);
  }

  /** Sensible heat that part takes out of air of a temperature, W. */
  double sensible(double share, double celsius) {
    return conductance(share) * (celsius - dryBulb);
  }

  /** Temperature of a flow of outdoor air, W/K, and a part of this together, °C. */
  double mixed(double share, double outdoor, double celsius) {
    double own = conductance(share);
    return own == 0 ? celsius : (outdoor * celsius + own * dryBulb) / (outdoor + own);
  }

  /** Humidity ratio of a flow of outdoor air, kg/s, and a part of this together, kg/kg. */
  double mixedHumidity(double share, double outdoor, double humidity) {
    double own = share * dryAir;
    return own == 0 ? humidity : (outdoor * humidity + own * humidityRatio) / (outdoor + own);
  }
}
