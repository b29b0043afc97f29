package org.shopclime.sun;

/**
 * Sun through a cloudless sky, W/m².
 *
 * @param directNormal beam on a face turned to the sun, 0 or more
 * @param diffuseHorizontal light of the sky on level ground, 0 or more
 * @param globalHorizontal both on level ground, 0 or more
 */
public record ClearSky(double directNormal, double diffuseHorizontal, double globalHorizontal) {

  /** Night. */
  public static final ClearSky DARK = new ClearSky(0, 0, 0);

  /** Refuses less than nothing. */
  public ClearSky {
    Range.check("direct normal, W/m²", directNormal, 0, 2000);
    Range.check("diffuse horizontal, W/m²", diffuseHorizontal, 0, 2000);
    Range.check("global horizontal, W/m²", globalHorizontal, 0, 2000);
  }
}
