package org.shopclime.shop;

import org.shopclime.quantity.Kind;

/**
 * Something that shades from above. An eave of a face is as wide as the face; an awning of a window
 * as wide as the window.
 *
 * @param depth how far it stands out, m
 * @param gap height between the top of what it shades and its underside, m
 * @param beyond how far it reaches beyond both side edges of what it belongs to, m
 */
public record Overhang(
    @Say(label = "Depth", kind = Kind.LENGTH, max = 10) double depth,
    @Say(label = "Gap below it", kind = Kind.LENGTH, max = 10, otherwise = "0 ft") double gap,
    @Say(label = "Reaches beyond the edges", kind = Kind.LENGTH, max = 50, otherwise = "0 ft")
        double beyond) {

  /**
   * One that ends with the edges of what it belongs to.
   *
   * @param depth how far it stands out, m
   * @param gap height between the top of what it shades and its underside, m
   */
  public Overhang(double depth, double gap) {
    this(depth, gap, 0);
  }
}
