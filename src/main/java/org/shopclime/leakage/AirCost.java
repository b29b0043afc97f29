package org.shopclime.leakage;

import org.shopclime.air.AirState;
import org.shopclime.quantity.Range;

/**
 * Heat and water that outdoor air brings into a room in exchange for its own.
 *
 * <p>Source: sensible m [h(To, Wi) - h(Ti, Wi)], latent m [h(To, Wo) - h(To, Wi)], as everywhere in
 * this program; m is the dry air in the volume that leaves, at the state of the room.
 *
 * @param sensible W, either sign
 * @param latent W, either sign
 * @param water kg/s, either sign
 */
public record AirCost(double sensible, double latent, double water) {

  /**
   * What a flow of outdoor air brings.
   *
   * @param flow volume of room air it replaces, m³/s, 0 to 1000
   * @param indoors air of the room
   * @param outdoors air outdoors
   * @return heat and water
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public static AirCost of(double flow, AirState indoors, AirState outdoors) {
    double mass = Range.check("outdoor air, m³/s,", flow, 0, 1000) * indoors.dryAirDensity();
    AirState warmed = indoors.withDryBulb(outdoors.dryBulb());
    return new AirCost(
        mass * (warmed.enthalpy() - indoors.enthalpy()),
        mass * (outdoors.enthalpy() - warmed.enthalpy()),
        mass * (outdoors.humidityRatio() - indoors.humidityRatio()));
  }

  /**
   * Both together.
   *
   * @return W
   */
  public double total() {
    return sensible + latent;
  }

  /**
   * Part of a cooling unit that it takes.
   *
   * @param ratedWatts what the unit gives, W, 1 to 1e7
   * @return 1 is the whole unit; more is more than it has
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public double partOfUnit(double ratedWatts) {
    return total() / Range.check("cooling of the unit, W,", ratedWatts, 1, 1e7);
  }
}
