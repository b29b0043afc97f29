package org.shopclime.sun;

/**
 * An upright rectangle (window, door or whole wall) and the boards that stand out from the wall
 * around it. Left and right are as seen from outdoors. The boards are thin, opaque and black.
 *
 * @param width width of the rectangle, m, above 0 to 1000
 * @param height height of the rectangle, m, above 0 to 1000
 * @param depth how far the overhang stands out, m, 0 to 100; 0 for none
 * @param gap from the top of the rectangle up to the overhang, m, 0 to 100
 * @param beyondLeft how far the overhang reaches beyond the left edge, m, -100 to 1000
 * @param beyondRight how far the overhang reaches beyond the right edge, m, -100 to 1000
 * @param left fin on the left
 * @param right fin on the right
 */
public record Shading(
    double width,
    double height,
    double depth,
    double gap,
    double beyondLeft,
    double beyondRight,
    Fin left,
    Fin right) {

  /** Refuses lengths outside their ranges, and an overhang of negative width. */
  public Shading {
    Range.check("width, m", width, Double.MIN_VALUE, 1000);
    Range.check("height, m", height, Double.MIN_VALUE, 1000);
    Range.check("overhang depth, m", depth, 0, 100);
    Range.check("overhang gap, m", gap, 0, 100);
    Range.check("overhang beyond left edge, m", beyondLeft, -100, 1000);
    Range.check("overhang beyond right edge, m", beyondRight, -100, 1000);
    Range.check("overhang width, m", beyondLeft + width + beyondRight, 0, 3000);
    Range.check("fin reach, m", left.below() + height + left.above(), 0, 1200);
    Range.check("fin reach, m", right.below() + height + right.above(), 0, 1200);
  }

  /**
   * An overhang as wide as the rectangle, no fins.
   *
   * @param width width of the rectangle, m
   * @param height height of the rectangle, m
   * @param depth how far the overhang stands out, m
   * @param gap from the top of the rectangle up to the overhang, m
   * @return the shading
   * @throws IllegalArgumentException if a length is outside its range
   */
  public static Shading overhang(double width, double height, double depth, double gap) {
    return new Shading(width, height, depth, gap, 0, 0, Fin.NONE, Fin.NONE);
  }

  /**
   * The same with the overhang reaching further (an eave along a wall).
   *
   * @param left beyond the left edge, m
   * @param right beyond the right edge, m
   * @return the shading
   * @throws IllegalArgumentException if a length is outside its range
   */
  public Shading withReach(double left, double right) {
    return new Shading(width, height, depth, gap, left, right, this.left, this.right);
  }

  /**
   * The same with fins.
   *
   * @param left fin on the left
   * @param right fin on the right
   * @return the shading
   * @throws IllegalArgumentException if a fin's reach is outside its range
   */
  public Shading withFins(Fin left, Fin right) {
    return new Shading(width, height, depth, gap, beyondLeft, beyondRight, left, right);
  }
}
