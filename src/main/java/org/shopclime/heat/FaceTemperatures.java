package org.shopclime.heat;

/** Temperatures of the faces of all chains, °C. */
public interface FaceTemperatures {

  /**
   * The left face of a chain.
   *
   * @param chain number of the chain
   * @return °C
   */
  double leftFace(int chain);

  /**
   * The right face of a chain.
   *
   * @param chain number of the chain
   * @return °C
   */
  double rightFace(int chain);
}
