package org.shopclime.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.shopclime.envelope.Films;
import org.shopclime.heat.March;

/**
 * What radiation by the fourth power differs from radiation made linear at the faces' means of a
 * season, as heat on the faces; and what gaps between panes pass more or less than at the
 * temperatures of their rating.
 *
 * <p>An outer face at T loses ε σ (T⁴ - Tm⁴ - 4 Tm³ (T - Tm)) more than the linear network says;
 * what it receives is exact there already ({@link Surroundings#before}). Inside, each face
 * exchanges with a radiant node whose T⁴ is what makes the sum of all equal the radiant gains, in
 * the linear network and in truth; so the differences of a room sum to 0 and no heat is made.
 *
 * <p>Error: temperatures are those at the end of the step before, so the difference lags by a step
 * of a quarter of an hour. Made once and only read.
 */
final class TrueRadiation {

  /** Takes the differences of one chain, W. */
  @FunctionalInterface
  interface Sink {

    /**
     * Takes both ends of a chain.
     *
     * @param chain number of the chain
     * @param left heat on its left face, W
     * @param right heat on its right face, W
     */
    void put(int chain, double left, double right);
  }

  /**
   * An outer face.
   *
   * @param chain number of its chain; it is the left end
   * @param black area times emittance, m²
   * @param mean temperature at which it was made linear, °C
   */
  private record Outer(int chain, double black, double mean) {

    double lacks(March march) {
      double celsius = march.leftFace(chain);
      return black
          * (Films.radiated(1, mean)
              + Films.radiative(1, mean) * (celsius - mean)
              - Films.radiated(1, celsius));
    }
  }

  /**
   * A side towards a room.
   *
   * @param chain number of its chain
   * @param isLeft which end
   * @param black area of a black face that exchanges as much, m²
   * @param linear its radiant conductance in the network, W/K
   */
  private record Inner(int chain, boolean isLeft, double black, double linear) {

    double celsius(March march) {
      return isLeft ? march.leftFace(chain) : march.rightFace(chain);
    }
  }

  /**
   * A pane with gaps.
   *
   * @param chain number of its chain
   * @param area area, m²
   * @param rated conductance in the network, W/(m²·K)
   * @param gaps the gaps
   */
  private record Gapped(int chain, double area, double rated, Piece.Gaps gaps) {

    /** Heat that passes from left to right beside what the network says, W. */
    double passes(March march, double pressure) {
      double left = march.leftFace(chain);
      double right = march.rightFace(chain);
      return area * (gaps.conductance(left, right, pressure) - rated) * (left - right);
    }
  }

  private final int chains;
  private final double pressure;
  private final List<Gapped> gapped = new ArrayList<>();
  private final List<Outer> outer = new ArrayList<>();
  private final List<List<Inner>> inner = new ArrayList<>();

  TrueRadiation(Skeleton skeleton, NetworkMaker maker, Linearisation at, double pressure) {
    this.pressure = pressure;
    chains = skeleton.pieces().size();
    skeleton.rooms().forEach(room -> inner.add(new ArrayList<>()));
    for (int chain = 0; chain < chains; chain++) {
      Piece piece = skeleton.pieces().get(chain);
      if (piece.gaps().isPresent()) {
        double rated = piece.nodes().conductance(0);
        gapped.add(new Gapped(chain, piece.area(), rated, piece.gaps().get()));
      }
      if (piece.outside() instanceof Piece.Outdoors outdoors) {
        double black = outdoors.emittance() * piece.area();
        outer.add(new Outer(chain, black, at.left(chain)));
      } else if (piece.outside() instanceof Piece.OtherRoom other) {
        double black = maker.exchangeArea(other.room(), other.side(), piece.area());
        inner
            .get(other.room())
            .add(side(chain, true, black, at.left(chain), at.star(other.room())));
      }
      double black = maker.exchangeArea(piece.room(), piece.inside(), piece.area());
      inner
          .get(piece.room())
          .add(side(chain, false, black, at.right(chain), at.star(piece.room())));
    }
  }

  private static Inner side(int chain, boolean isLeft, double black, double face, double star) {
    return new Inner(chain, isLeft, black, black * Films.radiative(1, (face + star) / 2));
  }

  /**
   * Tells the differences of all chains.
   *
   * @param march temperatures of the faces
   * @param gains radiant gains of a room, W
   * @param into takes them
   */
  void set(March march, IntToDoubleFunction gains, Sink into) {
    double[] left = new double[chains];
    double[] right = new double[chains];
    for (Outer face : outer) {
      left[face.chain()] += face.lacks(march);
    }
    for (Gapped pane : gapped) {
      double passes = pane.passes(march, pressure);
      left[pane.chain()] -= passes;
      right[pane.chain()] += passes;
    }
    for (int room = 0; room < inner.size(); room++) {
      exchange(inner.get(room), gains.applyAsDouble(room), march, left, right);
    }
    for (int chain = 0; chain < chains; chain++) {
      into.put(chain, left[chain], right[chain]);
    }
  }

  private static void exchange(
      List<Inner> faces, double gains, March march, double[] left, double[] right) {
    double linear = 0;
    double linearSum = gains;
    double black = 0;
    double blackSum = gains;
    for (Inner face : faces) {
      double celsius = face.celsius(march);
      linear += face.linear();
      linearSum += face.linear() * celsius;
      black += face.black();
      blackSum += face.black() * Films.radiated(1, celsius);
    }
    if (black == 0) {
      return;
    }
    for (Inner face : faces) {
      double celsius = face.celsius(march);
      double byNetwork = face.linear() * (linearSum / linear - celsius);
      double truly = face.black() * (blackSum / black - Films.radiated(1, celsius));
      double[] ends = face.isLeft() ? left : right;
      ends[face.chain()] += truly - byNetwork;
    }
  }
}
