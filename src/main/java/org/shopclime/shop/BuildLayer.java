package org.shopclime.shop;

import java.util.Optional;
import org.shopclime.quantity.Kind;

/**
 * One layer: a material of the tables with a thickness, or all its figures by hand.
 *
 * @param material name in the materials table, or the owner's own name where the figures are given
 * @param thickness thickness, m; absent: the material's usual one
 * @param conductivity conductivity, W/(m·K); absent: the table's
 * @param density density, kg/m³; absent: the table's
 * @param specificHeat specific heat, J/(kg·K); absent: the table's
 * @param resistance resistance of the whole layer, m²·K/W, in place of thickness and conductivity
 * @param permeance how well the whole layer lets vapour through, kg/(s·m²·Pa); absent: the table's
 * @param sd the same told as the thickness of still air that resists as much, m; one of the two
 */
public record BuildLayer(
    @Say(label = "Material") String material,
    @Say(label = "Thickness", kind = Kind.LENGTH, min = 1e-5, max = 3, otherwise = "none")
        Optional<Double> thickness,
    @Say(
            label = "Conductivity",
            kind = Kind.CONDUCTIVITY,
            min = 0.001,
            max = 500,
            otherwise = "none")
        Optional<Double> conductivity,
    @Say(label = "Density", kind = Kind.DENSITY, max = 12000, otherwise = "none")
        Optional<Double> density,
    @Say(label = "Specific heat", kind = Kind.SPECIFIC_HEAT, max = 5000, otherwise = "none")
        Optional<Double> specificHeat,
    @Say(label = "Resistance", kind = Kind.R_VALUE, max = 30, otherwise = "none")
        Optional<Double> resistance,
    @Say(
            label = "Vapor let through",
            help =
                "Permeance of the layer: poly {0.06|3.4}, kraft facing {0.8|46}, drywall {28 perm|1,600 ng/(s·m²·Pa)}.",
            kind = Kind.PERMEANCE,
            min = 1e-13,
            max = 4e-7,
            otherwise = "none")
        Optional<Double> permeance,
    @Say(
            label = "Vapor resistance (sd)",
            help =
                "The same told as a thickness of still air: poly {200 ft, drywall 5 in|60 m, drywall 0.13 m}.",
            kind = Kind.LENGTH,
            min = 0.0005,
            max = 1500,
            otherwise = "none")
        Optional<Double> sd) {

  /**
   * A layer that resists vapour as the tables say.
   *
   * @param material name in the materials table, or the owner's own name
   * @param thickness thickness, m; absent: the material's usual one
   * @param conductivity conductivity, W/(m·K); absent: the table's
   * @param density density, kg/m³; absent: the table's
   * @param specificHeat specific heat, J/(kg·K); absent: the table's
   * @param resistance resistance of the whole layer, m²·K/W
   */
  public BuildLayer(
      String material,
      Optional<Double> thickness,
      Optional<Double> conductivity,
      Optional<Double> density,
      Optional<Double> specificHeat,
      Optional<Double> resistance) {
    this(
        material,
        thickness,
        conductivity,
        density,
        specificHeat,
        resistance,
        Optional.empty(),
        Optional.empty());
  }
}
