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

  private static final double[] PROFILE_COSINE = new double[UP];
  private static final double[] PROFILE_TANGENT = new double[UP];
  private static final double[] ASIDE_TANGENT = new double[ASIDE];
  private static final double[] ASIDE_WEIGHT = new double[ASIDE];

  static {
    for (int i = 0; i < UP; i++) {
      // In the plane square to the wall equal steps of the sine bring equal light; out of that
      // plane the light goes as the squared cosine.
      double profile = Math.asin((i + 0.5) / UP);
      PROFILE_COSINE[i] = Math.cos(profile);
      PROFILE_TANGENT[i] = Math.tan(profile);
    }
    for (int j = 0; j < ASIDE; j++) {
      double aside = ((j + 0.5) / ASIDE - 0.5) * Math.PI;
      ASIDE_TANGENT[j] = Math.tan(aside);
      ASIDE_WEIGHT[j] = Math.cos(aside) * Math.cos(aside);
    }
  }

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
      double moveY = -side * PROFILE_TANGENT[i];
      for (int j = 0; j < ASIDE; j++) {
        double weight = ASIDE_WEIGHT[j];
        sum += weight * lit(ASIDE_TANGENT[j] / PROFILE_COSINE[i], moveY, shading);
        weights += weight;
      }
    }
    return sum / weights;
  }

  private static double lit(double moveX, double moveY, Shading s) {
    double right = s.width() + s.beyondRight();
    double roof =
        shadow(
            new Board(s.gap(), -s.beyondLeft(), right, -s.depth() * moveY, s.depth() * moveX),
            s.height(),
            s.width());
    // Fins stand beside the rectangle, so that only the one towards the sun throws shade on it.
    Fin fin = moveX > 0 ? s.left() : s.right();
    if (fin.depth() == 0) {
      return part(roof, s);
    }
    double beside =
        shadow(
            new Board(
                fin.gap(),
                -fin.below(),
                s.height() + fin.above(),
                fin.depth() * Math.abs(moveX),
                fin.depth() * moveY),
            s.width(),
            s.height());
    double both = roof > 0 && beside > 0 ? both(moveX, moveY, s) : 0;
    return part(roof + beside - both, s);
  }

  /**
   * A board square to one side of the rectangle, told across that side.
   *
   * @param gap from the side to the board, m
   * @param from where it begins along the side, m
   * @param to where it ends, m
   * @param across how far the shadow of its edge falls across the rectangle, m
   * @param along how far it falls along the side, m
   */
  private record Board(double gap, double from, double to, double across, double along) {}

  /**
   * Area shaded by one board alone. At a distance from the board its shadow is as long as itself
   * and lies moved along by as much of the whole way as the distance is of the whole.
   *
   * @param deep length of the rectangle across the side, m
   * @param wide length of the side, m
   */
  private static double shadow(Board board, double deep, double wide) {
    double across = board.across();
    if (!(across > board.gap())) {
      return 0;
    }
    double first = board.gap() / across;
    double last = Math.min(1, (deep + board.gap()) / across);
    double moved = first * board.along();
    double movedLast = last * board.along();
    double mean =
        meanWithin(board.to() + moved, board.to() + movedLast, wide)
            - meanWithin(board.from() + moved, board.from() + movedLast, wide);
    return mean * (last - first) * across;
  }

  /** Area that lies in the shadow of the overhang and of the fin towards the sun. */
  private static double both(double moveX, double moveY, Shading s) {
    double level = s.height() + s.gap();
    ConvexPolygon roof =
        ConvexPolygon.swept(
            -s.beyondLeft(),
            level,
            s.width() + s.beyondRight(),
            level,
            s.depth() * moveX,
            s.depth() * moveY);
    ConvexPolygon fin =
        moveX > 0
            ? fin(s.left(), -s.left().gap(), s.height(), moveX, moveY)
            : fin(s.right(), s.width() + s.right().gap(), s.height(), moveX, moveY);
    ConvexPolygon face = ConvexPolygon.swept(0, 0, s.width(), 0, 0, s.height());
    return roof.within(face).within(fin).area();
  }

  /** Mean between two ends of what runs evenly from one to the other, held within 0 to most. */
  private static double meanWithin(double one, double other, double most) {
    double low = Math.min(one, other);
    double high = Math.max(one, other);
    if (high <= 0) {
      return 0;
    }
    if (low >= most) {
      return most;
    }
    if (low >= 0 && high <= most) {
      return (low + high) / 2;
    }
    double first = Math.max(low, 0);
    double last = Math.min(high, most);
    double above = Math.max(high - most, 0);
    return ((last - first) * (first + last) / 2 + above * most) / (high - low);
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
