package org.shopclime.shop;

import org.shopclime.quantity.Kind;

/**
 * A way from one room into another that stands open, so that air passes as temperatures make it.
 *
 * @param name what the owner calls it
 * @param kind how it lies
 * @param width width, m
 * @param length height of a doorway, length of a floor opening, m
 * @param depth thickness of the floor, or height of the shaft, that a floor opening goes through,
 *     m; of no meaning for doorways
 * @param openWhen when it stands open
 */
public record Passage(
    @Say(label = "Name") String name,
    @Say(
            label = "Kind",
            help =
                "A floor opening is an open stair or hatch; a stair that is closed in is the doorway at its head or foot.")
        PassageKind kind,
    @Say(label = "Width", kind = Kind.LENGTH, min = 0.1, max = 200, usualMax = 10) double width,
    @Say(
            label = "Height or length",
            help = "Height of a doorway, length of a floor opening.",
            kind = Kind.LENGTH,
            min = 0.1,
            max = 200,
            usualMax = 10)
        double length,
    @Say(
            label = "Depth of the floor",
            help =
                "Thickness of the floor that a floor opening goes through, or height of its shaft.",
            kind = Kind.LENGTH,
            max = 30,
            usualMax = 3,
            otherwise = "1 ft")
        double depth,
    @Say(label = "Open when", otherwise = "always") Schedule openWhen) {

  /**
   * Area.
   *
   * @return m²
   */
  public double area() {
    return width * length;
  }
}
