package org.shopclime.sun;

/** What glass does with light by its angle. */
interface PassByAngle {

  /** Steps of the mean over the half sphere; within 1e-4 of the limit. */
  int STEPS = 90;

  /**
   * What becomes of the beam.
   *
   * @param incidenceDeg angle from the line square to the glass, degrees, 0 to 180
   * @return nothing passes and nothing stays from 90 degrees on
   */
  Pass at(double incidenceDeg);

  /** What becomes of an even half sphere of light. */
  default Pass diffuse() {
    Pass sum = new Pass(0, 0, 0);
    for (int i = 0; i < STEPS; i++) {
      // Equal steps of sine squared carry equal shares of the light.
      double sine = Math.sqrt((i + 0.5) / STEPS);
      sum = sum.plus(at(Math.toDegrees(Math.asin(sine))));
    }
    return sum.times(1.0 / STEPS);
  }
}
