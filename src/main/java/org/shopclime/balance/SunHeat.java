package org.shopclime.balance;

import java.util.List;
import java.util.stream.IntStream;

/**
 * Where the sun on a shop ends: on its outer faces, in its glass, and through the glass on the
 * faces inside.
 *
 * @param pieces heat paths
 * @param sun sun on the outer faces
 * @param inside where sun through the windows ends, by room
 */
record SunHeat(List<Piece> pieces, SunOnShop sun, List<SunInside> inside) {

  static SunHeat of(Skeleton skeleton, SunOnShop sun) {
    return new SunHeat(
        skeleton.pieces(),
        sun,
        IntStream.range(0, skeleton.rooms().size())
            .mapToObj(room -> SunInside.of(skeleton, room))
            .toList());
  }

  /** Adds what falls on one outdoor path in one hour, wherever it ends. */
  void put(int chain, int hour, HourSink into) {
    Piece piece = pieces.get(chain);
    double absorbed = sun.absorbed(chain, hour) * piece.area();
    double inner = sun.absorbedInside(chain, hour) * piece.area();
    into.addLeft(chain, hour, absorbed - inner);
    into.addRight(chain, hour, inner);
    if (piece.pane().isPresent()) {
      scatter(piece, chain, hour, into);
    }
  }

  /** Tells what falls on one outdoor path through the day, wherever it ends. */
  void tell(int chain, PartSink to) {
    Piece piece = pieces.get(chain);
    int component = piece.component().index();
    double area = piece.area();
    to.left(
        component,
        chain,
        Profile.of(
            hour -> (sun.absorbed(chain, hour - 1) - sun.absorbedInside(chain, hour - 1)) * area));
    if (piece.pane().isPresent()) {
      to.right(component, chain, Profile.of(hour -> sun.absorbedInside(chain, hour - 1) * area));
      tellInside(piece, chain, to);
    }
  }

  private void tellInside(Piece window, int chain, PartSink to) {
    int component = window.component().index();
    SunInside spread = inside.get(window.room());
    to.faces(
        component,
        spread.scattered(chain),
        Profile.of(hour -> sun.diffuse(chain, hour - 1) * window.area()));
    double[][] shares = new double[Profile.HOURS][];
    for (int hour = 0; hour < Profile.HOURS; hour++) {
      shares[hour] = sun.beam(chain, hour) > 0 ? spread.direct(chain, sun.sun(hour)) : null;
    }
    for (int hour = 0; hour < Profile.HOURS; hour++) {
      double[] each = shares[hour];
      if (each != null && firstOf(shares, each) == hour) {
        to.faces(
            component,
            each,
            Profile.of(h -> shares[h - 1] == each ? sun.beam(chain, h - 1) * window.area() : 0));
      }
    }
  }

  /** The first hour in which the beam is shared alike. */
  private static int firstOf(double[][] shares, double[] each) {
    int first = 0;
    while (shares[first] != each) {
      first++;
    }
    return first;
  }

  private void scatter(Piece window, int chain, int hour, HourSink into) {
    double beam = sun.beam(chain, hour) * window.area();
    double diffuse = sun.diffuse(chain, hour) * window.area();
    if (beam + diffuse > 0) {
      SunInside spread = inside.get(window.room());
      double[] direct = spread.direct(chain, sun.sun(hour));
      double[] scattered = spread.scattered(chain);
      for (int other = 0; other < pieces.size(); other++) {
        int left = 2 * other;
        int right = left + 1;
        into.addLeft(other, hour, beam * direct[left] + diffuse * scattered[left]);
        into.addRight(other, hour, beam * direct[right] + diffuse * scattered[right]);
      }
    }
  }
}
