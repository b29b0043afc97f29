package org.shopclime.shop;

import java.util.Optional;
import org.shopclime.quantity.Kind;

/**
 * A window in a face.
 *
 * @param name what the owner calls it
 * @param width width of the whole window, m
 * @param height height of the whole window, m
 * @param offset from the left edge of the face seen from outdoors, m
 * @param sill height above the bottom of the face, m
 * @param glass a named window of the tables, or by figures
 * @param innerShade part of the sun that curtain or film inside lets through, 0 to 1
 * @param outerShade part of the sun that a screen or board outside lets through, 0 to 1
 * @param overhang awning
 */
public record Window(
    @Say(label = "Name") String name,
    @Say(label = "Width", kind = Kind.LENGTH, min = 0.05, max = 30) double width,
    @Say(label = "Height", kind = Kind.LENGTH, min = 0.05, max = 30) double height,
    @Say(label = "From left", kind = Kind.LENGTH, max = 200, otherwise = "0 ft") double offset,
    @Say(label = "Sill height", kind = Kind.LENGTH, max = 30, otherwise = "3 ft") double sill,
    @Say(label = "Glass") Glass glass,
    @Say(label = "Sun let through by curtain", kind = Kind.FRACTION, max = 1, otherwise = "100 %")
        double innerShade,
    @Say(
            label = "Sun let through by outside screen",
            kind = Kind.FRACTION,
            max = 1,
            otherwise = "100 %")
        double outerShade,
    @Say(label = "Awning", otherwise = "none") Optional<Overhang> overhang) {

  /**
   * Area.
   *
   * @return m²
   */
  public double area() {
    return width * height;
  }

  /**
   * The same with another name.
   *
   * @param name what the owner calls it
   * @return the changed record
   */
  public Window withName(String name) {
    return new Window(name, width, height, offset, sill, glass, innerShade, outerShade, overhang);
  }

  /**
   * The same with another outside shade.
   *
   * @param outerShade part of the sun that a screen or board outside lets through, 0 to 1
   * @return the changed record
   */
  public Window withOuterShade(double outerShade) {
    return new Window(name, width, height, offset, sill, glass, innerShade, outerShade, overhang);
  }
}
