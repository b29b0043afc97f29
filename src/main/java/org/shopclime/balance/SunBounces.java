package org.shopclime.balance;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Where light thrown back evenly by the sides of a room ends, after all bounces. A plane sees the
 * others by the same factors as in infrared exchange ({@link RadiantFactors}) and spreads what
 * arrives by area; glass lets out its share and absorbs its share.
 */
final class SunBounces {

  /** Half of what is under way is absorbed in each round or so; after these nothing is left. */
  private static final int ROUNDS = 400;

  /** What one side of the room does with sun. */
  private record Side(int number, Piece.RoomSide side, double area, Piece.Pane pane) {

    double takes() {
      return pane == null ? side.absorptance() : pane.optics().diffuseAbsorptance();
    }

    double lets() {
      return pane == null ? 0 : pane.optics().diffuseTransmittance();
    }

    double throwsBack() {
      return Math.max(0, 1 - takes() - lets());
    }
  }

  private final List<Piece> pieces;
  private final int room;
  private final List<Side> sides = new ArrayList<>();
  private final Map<String, Double> planes = new LinkedHashMap<>();
  private final Map<String, double[]> ends = new LinkedHashMap<>();
  private final RadiantFactors factors;

  SunBounces(List<Piece> pieces, int room) {
    this.pieces = pieces;
    this.room = room;
    for (int chain = 0; chain < pieces.size(); chain++) {
      Piece piece = pieces.get(chain);
      if (piece.outside() instanceof Piece.OtherRoom other && other.room() == room) {
        add(2 * chain, other.side(), piece);
      }
      if (piece.room() == room) {
        add(2 * chain + 1, piece.inside(), piece);
      }
    }
    factors =
        new RadiantFactors(
            sides.stream().map(side -> side.side().plane()).toList(),
            sides.stream().map(Side::area).toList());
    planes.keySet().forEach(plane -> ends.put(plane, follow(plane)));
  }

  private void add(int number, Piece.RoomSide side, Piece piece) {
    sides.add(new Side(number, side, piece.area(), piece.pane().orElse(null)));
    planes.merge(side.plane(), piece.area(), Double::sum);
  }

  Piece piece(int chain) {
    return pieces.get(chain);
  }

  /** The side of a chain towards this room. */
  private Side sideOf(int chain) {
    int number = pieces.get(chain).room() == room ? 2 * chain + 1 : 2 * chain;
    return sides.stream().filter(side -> side.number() == number).findFirst().orElseThrow();
  }

  /** Parts of one unit of light that ends on each side, thrown evenly by a plane. */
  private double[] follow(String from) {
    double[] taken = new double[2 * pieces.size()];
    Map<String, Double> under = new LinkedHashMap<>();
    under.put(from, 1.0);
    for (int round = 0; round < ROUNDS; round++) {
      Map<String, Double> next = new LinkedHashMap<>();
      Map<String, Double> arriving = arrive(under);
      for (Side side : sides) {
        String plane = side.side().plane();
        double falls = arriving.getOrDefault(plane, 0.0) * side.area() / planes.get(plane);
        take(side, falls, taken);
        next.merge(plane, falls * side.throwsBack(), Double::sum);
      }
      under = next;
    }
    return taken;
  }

  private Map<String, Double> arrive(Map<String, Double> leaving) {
    Map<String, Double> arriving = new LinkedHashMap<>();
    for (Map.Entry<String, Double> each : leaving.entrySet()) {
      double seen = 0;
      for (Map.Entry<String, Double> plane : planes.entrySet()) {
        seen += sees(each.getKey(), plane.getKey());
      }
      for (String plane : planes.keySet()) {
        double share = sees(each.getKey(), plane) / seen;
        arriving.merge(plane, each.getValue() * share, Double::sum);
      }
    }
    return arriving;
  }

  private double sees(String from, String to) {
    boolean alone = planes.size() == 1;
    return from.equals(to) && !alone ? 0 : planes.get(to) * factors.of(to);
  }

  private static void take(Side side, double falls, double[] taken) {
    double kept = falls * side.takes();
    if (side.pane() == null) {
      taken[side.number()] += kept;
    } else {
      // Light from inside meets the inner pane first: the mirror of light from outdoors.
      double far = kept * side.pane().optics().diffuseInnerShare();
      taken[side.number()] += kept - far;
      taken[side.number() ^ 1] += far;
    }
  }

  /** Where scattered sun ends that a window lets in. */
  double[] scattered(int window) {
    return ends.get(sideOf(window).side().plane());
  }

  /** Chains of the windows that look from this room outdoors. */
  List<Integer> windows() {
    return IntStream.range(0, pieces.size())
        .filter(chain -> pieces.get(chain).room() == room)
        .filter(chain -> pieces.get(chain).pane().isPresent())
        .boxed()
        .toList();
  }

  /** Sides that form the floor. */
  List<Integer> floor() {
    return sides.stream().filter(s -> s.side().isFloor()).map(sides::indexOf).toList();
  }

  /** Upright sides that look in a compass direction within 45 degrees. */
  List<Integer> walls(double azimuth) {
    return sides.stream().filter(s -> s.side().looksTo(azimuth)).map(sides::indexOf).toList();
  }

  /** Where one unit of sun ends that falls first on some sides, spread by their area. */
  double[] firstOn(List<Integer> hit) {
    double area = hit.stream().mapToDouble(index -> sides.get(index).area()).sum();
    double[] found = new double[2 * pieces.size()];
    for (int index : hit) {
      Side side = sides.get(index);
      double falls = side.area() / area;
      take(side, falls, found);
      double[] then = ends.get(side.side().plane());
      for (int i = 0; i < found.length; i++) {
        found[i] += falls * side.throwsBack() * then[i];
      }
    }
    return found;
  }
}
