package org.shopclime.envelope;

import java.util.OptionalDouble;

/**
 * One layer of a wall, roof, door or floor, per m² of face.
 *
 * <p>A massless layer ({@link #massless}) keeps its resistance as a thickness of as many metres at
 * 1 W/(m·K); that thickness is of no other meaning.
 *
 * @param name what it is
 * @param thickness thickness, m, 0 to 100
 * @param conductivity conductivity, W/(m·K), above 0 to 1000
 * @param density density, kg/m³, 0 to 25000
 * @param specificHeat specific heat, J/(kg·K), 0 to 10000
 * @param vapour thickness of still air that resists vapour as much, m, 0 to 1e6; empty: not known
 */
public record Layer(
    String name,
    double thickness,
    double conductivity,
    double density,
    double specificHeat,
    OptionalDouble vapour) {

  /** Refuses figures outside their ranges. */
  public Layer {
    Range.require("thickness of ", name, ", m,", thickness, 0, 100);
    Range.requireAbove("conductivity of ", name, ", W/(m·K),", conductivity, 0, 1000);
    Range.require("density of ", name, ", kg/m³,", density, 0, 25000);
    Range.require("specific heat of ", name, ", J/(kg·K),", specificHeat, 0, 10000);
    Range.require("vapour resistance of ", name, ", m,", vapour.orElse(0), 0, 1e6);
  }

  /**
   * A layer of which nothing tells how it resists vapour.
   *
   * @param name what it is
   * @param thickness thickness, m, 0 to 100
   * @param conductivity conductivity, W/(m·K), above 0 to 1000
   * @param density density, kg/m³, 0 to 25000
   * @param specificHeat specific heat, J/(kg·K), 0 to 10000
   */
  public Layer(
      String name, double thickness, double conductivity, double density, double specificHeat) {
    this(name, thickness, conductivity, density, specificHeat, OptionalDouble.empty());
  }

  /**
   * The same with another resistance to vapour.
   *
   * @param airThickness thickness of still air that resists as much, m, 0 to 1e6
   * @return the layer
   * @throws IllegalArgumentException if it is outside that range
   */
  public Layer withVapour(double airThickness) {
    return new Layer(
        name, thickness, conductivity, density, specificHeat, OptionalDouble.of(airThickness));
  }

  /**
   * A layer that resists and stores nothing, such as an air space.
   *
   * @param name what it is
   * @param resistance resistance, m²·K/W, 0 to 100
   * @return the layer
   * @throws IllegalArgumentException if the resistance is outside that range
   */
  public static Layer massless(String name, double resistance) {
    Range.require("resistance of ", name, ", m²·K/W,", resistance, 0, 100);
    return new Layer(name, resistance, 1, 0, 0);
  }

  /**
   * Whether its thickness means anything.
   *
   * @return false for a layer told by its resistance alone ({@link #massless})
   */
  public boolean isThicknessTold() {
    return density > 0 || conductivity != 1;
  }

  /**
   * Resistance from face to face.
   *
   * @return m²·K/W, 0 or more
   */
  public double resistance() {
    return thickness / conductivity;
  }

  /**
   * Heat it stores for one kelvin.
   *
   * @return J/(m²·K), 0 or more
   */
  public double heatCapacity() {
    return thickness * density * specificHeat;
  }
}
