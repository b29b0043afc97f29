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
 * @param fins boards or walls that stand out at its left and right edge; absent: those of the face
 * @param emittanceOutside infrared emittance of the outer pane's outside, 0 to 1
 * @param emittanceInside infrared emittance of the inner pane's inside, 0 to 1
 * @param filmOutside convective film outside, without radiation, W/(m²·K); absent: that of the face
 * @param filmInside the same inside
 * @param spandrel makes of it an opaque panel that resists as the glass does and lets no sun in
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
    @Say(label = "Awning", otherwise = "none") Optional<Overhang> overhang,
    @Say(label = "Fins", help = "Boards or walls at both side edges.", otherwise = "none")
        Optional<Fins> fins,
    @Say(
            label = "Emittance outside",
            help = "84 % for bare glass.",
            kind = Kind.FRACTION,
            max = 1,
            otherwise = "0.84")
        double emittanceOutside,
    @Say(
            label = "Emittance inside",
            help = "84 % for bare glass.",
            kind = Kind.FRACTION,
            min = 0.02,
            max = 1,
            otherwise = "0.84")
        double emittanceInside,
    @Say(
            label = "Film outside",
            help = "Convection only, without radiation; leave empty for that of the wall.",
            kind = Kind.U_FACTOR,
            min = 0.1,
            max = 200,
            otherwise = "none")
        Optional<Double> filmOutside,
    @Say(
            label = "Film inside",
            help = "Convection only, without radiation; leave empty for that of the wall.",
            kind = Kind.U_FACTOR,
            min = 0.1,
            max = 200,
            otherwise = "none")
        Optional<Double> filmInside,
    @Say(
            label = "Opaque panel in its place",
            help = "A spandrel: panes that let no sun in.",
            otherwise = "none")
        Optional<Spandrel> spandrel) {

  /** Infrared emittance of bare glass (ISO 10292: 0.837). */
  private static final double BARE_GLASS = 0.84;

  /**
   * A window of bare glass without fins, with the films of its wall.
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
  public Window(
      String name,
      double width,
      double height,
      double offset,
      double sill,
      Glass glass,
      double innerShade,
      double outerShade,
      Optional<Overhang> overhang) {
    this(
        name,
        width,
        height,
        offset,
        sill,
        glass,
        innerShade,
        outerShade,
        overhang,
        Optional.empty(),
        BARE_GLASS,
        BARE_GLASS,
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

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
    return (Window) ShopParts.with(this, "name", name);
  }

  /**
   * The same with another outside shade.
   *
   * @param outerShade part of the sun that a screen or board outside lets through, 0 to 1
   * @return the changed record
   */
  public Window withOuterShade(double outerShade) {
    return (Window) ShopParts.with(this, "outerShade", outerShade);
  }
}
