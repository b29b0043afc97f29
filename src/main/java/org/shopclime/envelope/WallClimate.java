package org.shopclime.envelope;

/**
 * What stands steadily on both sides of a wall.
 *
 * @param outerFace temperature of the outer face, °C
 * @param outerPressure vapour pressure of the air before it, Pa, 0 or more
 * @param innerFace temperature of the inner face, °C
 * @param innerPressure vapour pressure of the air before it, Pa, 0 or more
 */
public record WallClimate(
    double outerFace, double outerPressure, double innerFace, double innerPressure) {

  /** Refuses figures outside their ranges. */
  public WallClimate {
    Range.require("temperature of the outer face, °C,", outerFace, -100, 150);
    Range.require("temperature of the inner face, °C,", innerFace, -100, 150);
    Range.require("outer vapour pressure, Pa,", outerPressure, 0, 400_000);
    Range.require("inner vapour pressure, Pa,", innerPressure, 0, 400_000);
  }

  /**
   * A side of a wall.
   *
   * @param celsius air temperature, °C
   * @param pressure vapour pressure, Pa
   * @param film resistance of the film, m²·K/W, 0 to 10
   */
  public record Air(double celsius, double pressure, double film) {

    /**
     * Air by its relative humidity.
     *
     * @param celsius air temperature, °C
     * @param humidity relative humidity, 0 to 1
     * @param film resistance of the film, m²·K/W, 0 to 10
     * @return the side
     */
    public static Air ofHumidity(double celsius, double humidity, double film) {
      return new Air(
          celsius,
          Range.require("relative humidity", humidity, 0, 1) * Vapour.saturation(celsius),
          film);
    }
  }

  /**
   * The faces of a wall between two airs; films resist heat, but no vapour to speak of.
   *
   * @param wall the wall
   * @param outer air outside
   * @param inner air inside
   * @return temperatures of the faces and vapour pressures
   */
  public static WallClimate between(SlicedWall wall, Air outer, Air inner) {
    double all = outer.film() + wall.innerFace().resistance() + inner.film();
    double slope = (inner.celsius() - outer.celsius()) / all;
    return new WallClimate(
        outer.celsius() + slope * outer.film(),
        outer.pressure(),
        inner.celsius() - slope * inner.film(),
        inner.pressure());
  }
}
