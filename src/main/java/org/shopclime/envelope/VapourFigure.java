package org.shopclime.envelope;

import java.util.OptionalDouble;

/**
 * How a material resists vapour.
 *
 * @param factor times as much as still air of its thickness, 1 to 1e7; of no meaning where the
 *     resistance is fixed
 * @param fixed thickness of still air that resists as much at any thickness, m (facings, paints,
 *     sheets, air spaces); empty where it follows the thickness
 * @param source where the figure comes from
 */
public record VapourFigure(double factor, OptionalDouble fixed, String source) {

  /** Refuses figures outside their ranges. */
  public VapourFigure {
    Range.require("vapour resistance factor", factor, 1, 1e7);
    Range.require("vapour resistance, m,", fixed.orElse(0), 0, 1e6);
  }

  /**
   * Thickness of still air that resists as much as a layer.
   *
   * @param thickness thickness of the layer, m
   * @return m
   */
  public double airThickness(double thickness) {
    return fixed.orElse(factor * thickness);
  }
}
