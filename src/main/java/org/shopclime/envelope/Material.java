package org.shopclime.envelope;

import java.util.OptionalDouble;

/**
 * A building material of the table.
 *
 * @param name name, as an owner would write it
 * @param usualThickness thickness it is usually sold or laid in, m
 * @param conductivity conductivity, W/(m·K); where the resistance is fixed, that of the usual
 *     thickness
 * @param fixedResistance resistance that does not follow the thickness, m²·K/W (air spaces, hollow
 *     blocks, shingles); empty where it is thickness over conductivity
 * @param density density, kg/m³
 * @param specificHeat specific heat, J/(kg·K)
 * @param solarAbsorptance part of the sun its bare face takes in, 0 to 1
 * @param vapour how it resists vapour
 * @param source where the figures come from
 * @param status {@code confirmed} (resistance seen on the page named) or {@code memory}
 */
public record Material(
    String name,
    double usualThickness,
    double conductivity,
    OptionalDouble fixedResistance,
    double density,
    double specificHeat,
    double solarAbsorptance,
    VapourFigure vapour,
    String source,
    String status) {

  /** Refuses figures outside their ranges. */
  public Material {
    Range.requireAbove("usual thickness of " + name + ", m,", usualThickness, 0, 3);
    Range.requireAbove("conductivity of " + name + ", W/(m·K),", conductivity, 0, 1000);
    Range.require("density of " + name + ", kg/m³,", density, 0, 25000);
    Range.require("specific heat of " + name + ", J/(kg·K),", specificHeat, 0, 10000);
    Range.require("solar absorptance of " + name, solarAbsorptance, 0, 1);
    Range.require("resistance of " + name + ", m²·K/W,", fixedResistance.orElse(0), 0, 100);
  }

  /**
   * A layer of it. Where the resistance is fixed it stays what it is at any thickness; the mass
   * follows the thickness.
   *
   * @param thickness thickness, m, above 0 to 3
   * @return the layer
   * @throws IllegalArgumentException if the thickness is outside that range
   */
  public Layer layer(double thickness) {
    Range.requireAbove("thickness of " + name + ", m,", thickness, 0, 3);
    double effective =
        fixedResistance.isPresent() ? thickness / fixedResistance.getAsDouble() : conductivity;
    return new Layer(
        name,
        thickness,
        effective,
        density,
        specificHeat,
        OptionalDouble.of(vapour.airThickness(thickness)));
  }

  /**
   * A layer of its usual thickness.
   *
   * @return the layer
   */
  public Layer usualLayer() {
    return layer(usualThickness);
  }
}
