package org.shopclime.load;

import org.shopclime.balance.ComponentKind;
import org.shopclime.balance.Profile;

/**
 * One line of a cooled room's load.
 *
 * @param name what the owner calls it
 * @param kind what it is
 * @param area area, m²; 0 where there is none
 * @param uFactor transmittance, W/(m²·K); 0 where there is none
 * @param drive temperature behind it less the room's, K, by the hour
 * @param sensible heat it brings to the room air, W, by the hour
 * @param latent latent heat it brings, W, by the hour
 */
public record Line(
    String name,
    ComponentKind kind,
    double area,
    double uFactor,
    Profile drive,
    Profile sensible,
    Profile latent) {

  /**
   * The sum by pencil: transmittance times area times temperature difference.
   *
   * @param hour hour ending 1 to 24
   * @return W; for lines without area the sensible heat itself
   */
  public double pencil(int hour) {
    return kind.isFace() ? uFactor * area * drive.at(hour) : sensible.at(hour);
  }
}
