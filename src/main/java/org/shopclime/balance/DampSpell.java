package org.shopclime.balance;

import org.shopclime.envelope.Diffusion;
import org.shopclime.envelope.Vapour;

/**
 * A path through a wall at one time.
 *
 * @param time the time
 * @param outerAir temperature of the air on its outer side, °C
 * @param outerPressure vapour pressure there, Pa
 * @param innerAir temperature of the air on its inner side, °C
 * @param innerPressure vapour pressure there, Pa
 * @param diffusion temperature and vapour at each plane, the wall being dry before
 */
public record DampSpell(
    DampTime time,
    double outerAir,
    double outerPressure,
    double innerAir,
    double innerPressure,
    Diffusion diffusion) {

  /**
   * The plane at which most water falls out.
   *
   * @return number of the plane; -1 if none does
   */
  public int wettest() {
    int best = -1;
    for (int plane = 1; plane < planes() - 1; plane++) {
      if (diffusion.rate(plane) > (best < 0 ? 0 : diffusion.rate(best))) {
        best = plane;
      }
    }
    return best;
  }

  /**
   * Water that falls out at all planes.
   *
   * @return kg/(s·m²)
   */
  public double rate() {
    double rate = 0;
    for (int plane = 1; plane < planes() - 1; plane++) {
      rate += Math.max(0, diffusion.rate(plane));
    }
    return rate;
  }

  /**
   * Relative humidity of the damper of both airs.
   *
   * @return 0 to 1, above 1 in fog
   */
  public double airHumidity() {
    return Math.max(
        outerPressure / Vapour.saturation(outerAir), innerPressure / Vapour.saturation(innerAir));
  }

  private int planes() {
    return diffusion.wall().planes().size();
  }
}
