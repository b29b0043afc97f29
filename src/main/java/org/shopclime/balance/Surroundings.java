package org.shopclime.balance;

import org.shopclime.climate.GroundTemperature;

/** Temperatures on the far side of the shell: air, sky and ground before it, ground below it. */
final class Surroundings {

  private static final double KELVIN = 273.15;

  private static final double SOIL_DIFFUSIVITY_PER_CONDUCTIVITY = 86400 / (1800.0 * 1100.0);

  private Surroundings() {}

  /**
   * Temperature that stands for air, sky and ground before an outer face. The upper part of the sky
   * seen is at the sky's temperature, near the horizon it nears the air's (Walton, NBSIR 83-2655:
   * share root of (1 + cos tilt)/2); the ground is taken at air temperature.
   *
   * <p>What the face gives off is linear about its mean (4 ε σ T³); what it receives goes with the
   * fourth power, so that the exchange is exact while the face is at its mean.
   *
   * @param outdoors the face
   * @param mean its mean temperature, °C
   * @param air outdoor air temperature, °C
   * @param sky sky temperature, °C
   * @return °C
   */
  static double before(Piece.Outdoors outdoors, double mean, double air, double sky) {
    return before(outdoors, mean, air, fourth(air), fourth(sky));
  }

  /** The same from the fourth powers of air and sky, K⁴. */
  static double before(
      Piece.Outdoors outdoors, double mean, double air, double airFourth, double skyFourth) {
    double view = (1 + Math.cos(Math.toRadians(outdoors.tilt()))) / 2;
    double share = view * Math.sqrt(view);
    double face = mean + KELVIN;
    double received = share * skyFourth + (1 - share) * airFourth;
    double seen = mean - (fourth(mean) - received) / (4 * face * face * face);
    double radiative = NetworkMaker.outerRadiative(outdoors, mean);
    return (outdoors.convective() * air + radiative * seen) / (outdoors.convective() + radiative);
  }

  /** Fourth power of a temperature given in °C, K⁴. */
  static double fourth(double celsius) {
    double kelvin = celsius + KELVIN;
    return kelvin * kelvin * kelvin * kelvin;
  }

  /**
   * Temperature of the ground that a face touches.
   *
   * @param ground the ground
   * @param wave ground temperature through the year
   * @param dayOfYear day of the year
   * @return °C, through all of the day
   */
  static double below(Piece.Ground ground, GroundTemperature wave, int dayOfYear) {
    return ground
        .held()
        .orElseGet(
            () ->
                wave.at(
                    ground.depth(),
                    dayOfYear,
                    ground.soilConductivity() * SOIL_DIFFUSIVITY_PER_CONDUCTIVITY));
  }
}
