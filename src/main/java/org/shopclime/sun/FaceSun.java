package org.shopclime.sun;

/**
 * Sun on a face, W/m² of the face.
 *
 * @param beam straight from the sun, 0 or more
 * @param sky from the sky, its bright part around the sun included, 0 or more
 * @param ground thrown up by the ground, 0 or more
 * @param incidenceDeg angle between the sun and the line square to the face, degrees, 0 to 180;
 *     beyond 90 the sun is behind the face
 * @param around part of {@code sky} that comes from close around the sun, 0 to {@code sky}
 */
public record FaceSun(double beam, double sky, double ground, double incidenceDeg, double around) {

  /** Refuses less than nothing. */
  public FaceSun {
    Range.check("beam, W/m²", beam, 0, Double.MAX_VALUE);
    Range.check("sky, W/m²", sky, 0, Double.MAX_VALUE);
    Range.check("ground, W/m²", ground, 0, Double.MAX_VALUE);
    Range.check("incidence, degrees", incidenceDeg, 0, 180);
    Range.check("around the sun, W/m²", around, 0, sky);
  }

  /**
   * Sun with an even sky.
   *
   * @param beam straight from the sun, 0 or more
   * @param sky from the sky, 0 or more
   * @param ground thrown up by the ground, 0 or more
   * @param incidenceDeg angle between the sun and the line square to the face, degrees, 0 to 180
   */
  public FaceSun(double beam, double sky, double ground, double incidenceDeg) {
    this(beam, sky, ground, incidenceDeg, 0);
  }

  /**
   * All three.
   *
   * @return W/m²
   */
  public double total() {
    return beam + sky + ground;
  }
}
