package org.shopclime.sun;

/**
 * Sun on a face, W/m² of the face.
 *
 * @param beam straight from the sun, 0 or more
 * @param sky from the sky, its bright part around the sun included, 0 or more
 * @param ground thrown up by the ground, 0 or more
 * @param incidenceDeg angle between the sun and the line square to the face, degrees, 0 to 180;
 *     beyond 90 the sun is behind the face
 */
public record FaceSun(double beam, double sky, double ground, double incidenceDeg) {

  /** Refuses less than nothing. */
  public FaceSun {
    Range.check("beam, W/m²", beam, 0, Double.MAX_VALUE);
    Range.check("sky, W/m²", sky, 0, Double.MAX_VALUE);
    Range.check("ground, W/m²", ground, 0, Double.MAX_VALUE);
    Range.check("incidence, degrees", incidenceDeg, 0, 180);
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
