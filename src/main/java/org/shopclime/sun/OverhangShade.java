package org.shopclime.sun;

/**
 * How much of an upright rectangle the sun and the sky still reach under an overhang and between
 * fins.
 *
 * <p>Source: geometry. The shadows of the boards are parallelograms on the wall; their union is cut
 * to the rectangle exactly. Light thrown by the boards themselves is left out.
 */
public final class OverhangShade {

  /** Directions up and aside over half the sky; the result is within 0.002 of the limit. */
  private static final int UP = 60;

  private static final int ASIDE = 24;

  private OverhangShade() {}

  /**
   * Part of the rectangle in the sun.
   *
   * @param sun where the sun stands
   * @param wallAzimuthDeg compass direction the wall looks to, degrees from north, 0 to 360
   * @param shading the rectangle and its boards
   * @return 0 to 1; 0 when the sun is down or behind the wall
   * @throws IllegalArgumentException if the azimuth is outside its range
   */
  public static double sunlitFraction(SunAngles sun, double wallAzimuthDeg, Shading shading) {
    Range.check("wall azimuth, degrees", wallAzimuthDeg, 0, 360);
    double aside = Math.toRadians(sun.azimuthDeg() - wallAzimuthDeg);
    // In the plane of the wall the shadow has no end, and the sun brings nothing.
    if (!sun.isUp() || sun.cosineOn(90, wallAzimuthDeg) <= 1e-6) {
      return 0;
    }
    // Where the shadow of a point one metre out from the wall falls.
    double down = Math.tan(Math.toRadians(sun.altitudeDeg())) / Math.cos(aside);
    return lit(Math.tan(aside), -down, shading);
  }

  /**
   * Part of the rectangle in the sun below an overhang as wide as itself.
   *
   * @param sun where the sun stands
   * @param wallAzimuthDeg compass direction the wall looks to, degrees from north, 0 to 360
   * @param width width of the rectangle, m
   * @param height height of the rectangle, m
   * @param overhangDepth how far the overhang stands out, m
   * @param gap from the top of the rectangle up to the overhang, m
   * @return 0 to 1; 0 when the sun is down or behind the wall
   * @throws IllegalArgumentException if a figure is outside its range
   */
  public static double sunlitFraction(
      SunAngles sun,
      double wallAzimuthDeg,
      double width,
      double height,
      double overhangDepth,
      double gap) {
    return sunlitFraction(sun, wallAzimuthDeg, Shading.overhang(width, height, overhangDepth, gap));
  }

  /**
   * Part of an even sky's light on the wall that still reaches the rectangle: the sunlit part,
   * averaged over the sky in front of the wall by the light each direction brings. Reckon once per
   * opening and keep.
   *
   * @param shading the rectangle and its boards
   * @return 0 to 1
   */
  public static double skyFraction(Shading shading) {
    return shading.depth() == 0 && !finned(shading) ? 1 : halfSphere(shading, 1);
  }

  /**
   * The same for light from even ground; only fins take from it, as an overhang lies above.
   *
   * @param shading the rectangle and its boards
   * @return 0 to 1
   */
  public static double groundFraction(Shading shading) {
    return finned(shading) ? halfSphere(shading, -1) : 1;
  }

  private static boolean finned(Shading shading) {
    return shading.left().depth() > 0 || shading.right().depth() > 0;
  }

  private static double halfSphere(Shading shading, int side) {
    double sum = 0;
    double weights = 0;
    for (int i = 0; i < UP; i++) {
      // In the plane square to the wall equal steps of the sine bring equal light; out of that
      // plane the light goes as the squared cosine.
      double profile = Math.asin((i + 0.5) / UP);
      for (int j = 0; j < ASIDE; j++) {
        double aside = ((j + 0.5) / ASIDE - 0.5) * Math.PI;
        double weight = Math.cos(aside) * Math.cos(aside);
        double moveX = Math.tan(aside) / Math.cos(profile);
        sum += weight * lit(moveX, -side * Math.tan(profile), shading);
        weights += weight;
      }
    }
    return sum / weights;
  }

  private static double lit(double moveX, double moveY, Shading s) {
    ConvexPolygon face = ConvexPolygon.swept(0, 0, s.width(), 0, 0, s.height());
    double level = s.height() + s.gap();
    ConvexPolygon roof =
        ConvexPolygon.swept(
                -s.beyondLeft(),
                level,
                s.width() + s.beyondRight(),
                level,
                s.depth() * moveX,
                s.depth() * moveY)
            .within(face);
    if (!finned(s)) {
      return part(roof.area(), s);
    }
    ConvexPolygon left = fin(s.left(), -s.left().gap(), s.height(), moveX, moveY).within(face);
    ConvexPolygon right =
        fin(s.right(), s.width() + s.right().gap(), s.height(), moveX, moveY).within(face);
    double shaded =
        roof.area()
            + left.area()
            + right.area()
            - roof.within(left).area()
            - roof.within(right).area()
            - left.within(right).area()
            + roof.within(left).within(right).area();
    return part(shaded, s);
  }

  /** Part of the rectangle that is left when so much of it lies in shade. */
  private static double part(double shaded, Shading s) {
    double lit = 1 - shaded / (s.width() * s.height());
    // Rounding of the areas may leave the last digits outside.
    return Math.max(0, Math.min(1, lit));
  }

  private static ConvexPolygon fin(Fin fin, double x, double height, double moveX, double moveY) {
    return ConvexPolygon.swept(
        x, -fin.below(), x, height + fin.above(), fin.depth() * moveX, fin.depth() * moveY);
  }
}
