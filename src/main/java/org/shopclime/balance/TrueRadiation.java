package org.shopclime.balance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.shopclime.envelope.Films;

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
 * <p>Made once and only read.
 */
final class TrueRadiation {

  /** Outer faces, left ends of their chains. What each lacks is a + b T - c (T in K)⁴, W. */
  private static final class Outer {

    /** 2 k for chain k. */
    private final int[] ends;

    private final double[] a;
    private final double[] b;
    private final double[] c;

    Outer(int count) {
      ends = new int[count];
      a = new double[count];
      b = new double[count];
      c = new double[count];
    }

    /** Sets a face of so many m² of black, made linear at a mean temperature, °C. */
    void set(int i, int chain, double area, double mean) {
      double slope = area * Films.radiative(1, mean);
      ends[i] = 2 * chain;
      a[i] = area * Films.radiated(1, mean) - slope * mean;
      b[i] = slope;
      c[i] = fourth(area);
    }
  }

  /** The sides of a room. */
  private static final class Inner {

    /** 2 k for the left, 2 k + 1 for the right end of chain k. */
    private final int[] ends;

    /** Those of black faces that exchange as much, W/K⁴. */
    private final double[] black;

    /** Their radiant conductances in the network, W/K. */
    private final double[] linear;

    private final double blackSum;
    private final double linearSum;

    Inner(List<Side> sides) {
      ends = sides.stream().mapToInt(Side::end).toArray();
      black = sides.stream().mapToDouble(Side::black).toArray();
      linear = sides.stream().mapToDouble(Side::linear).toArray();
      blackSum = Arrays.stream(black).sum();
      linearSum = Arrays.stream(linear).sum();
    }
  }

  private record Side(int end, double black, double linear) {}

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
    double passes(double[] faces, double pressure) {
      double left = faces[2 * chain];
      double right = faces[2 * chain + 1];
      return area * (gaps.conductance(left, right, pressure) - rated) * (left - right);
    }
  }

  private final double pressure;
  private final Gapped[] gapped;
  private final Outer outer;
  private final Inner[] inner;

  TrueRadiation(Skeleton skeleton, NetworkMaker maker, Linearisation at, double pressure) {
    this.pressure = pressure;
    List<Piece> pieces = skeleton.pieces();
    List<Gapped> panes = new ArrayList<>();
    List<List<Side>> sides = new ArrayList<>();
    skeleton.rooms().forEach(room -> sides.add(new ArrayList<>()));
    outer = new Outer((int) pieces.stream().filter(TrueRadiation::isOutdoors).count());
    int outdoors = 0;
    for (int chain = 0; chain < pieces.size(); chain++) {
      Piece piece = pieces.get(chain);
      if (piece.gaps().isPresent()) {
        double rated = piece.nodes().conductance(0);
        panes.add(new Gapped(chain, piece.area(), rated, piece.gaps().get()));
      }
      if (piece.outside() instanceof Piece.Outdoors out) {
        outer.set(outdoors++, chain, out.emittance() * piece.area(), at.left(chain));
      } else if (piece.outside() instanceof Piece.OtherRoom other) {
        double black = maker.exchangeArea(other.room(), other.side(), piece.area());
        sides.get(other.room()).add(side(2 * chain, black, at.left(chain), at.star(other.room())));
      }
      double black = maker.exchangeArea(piece.room(), piece.inside(), piece.area());
      sides
          .get(piece.room())
          .add(side(2 * chain + 1, black, at.right(chain), at.star(piece.room())));
    }
    gapped = panes.toArray(Gapped[]::new);
    inner = sides.stream().map(Inner::new).toArray(Inner[]::new);
  }

  private static boolean isOutdoors(Piece piece) {
    return piece.outside() instanceof Piece.Outdoors;
  }

  private static Side side(int end, double black, double face, double star) {
    return new Side(end, fourth(black), black * Films.radiative(1, (face + star) / 2));
  }

  /** What so many m² of black give off for each K⁴, W. */
  private static double fourth(double black) {
    return black * Films.STEFAN_BOLTZMANN;
  }

  /**
   * Tells the differences of all chains.
   *
   * @param faces temperatures of the left (2 k) and right (2 k + 1) face of chain k, °C
   * @param gains radiant gains of each room, W
   * @param ends set to the heat on each of them, W
   */
  void find(double[] faces, double[] gains, double[] ends) {
    Arrays.fill(ends, 0);
    for (int i = 0; i < outer.ends.length; i++) {
      double celsius = faces[outer.ends[i]];
      ends[outer.ends[i]] = outer.a[i] + outer.b[i] * celsius - outer.c[i] * fourthPower(celsius);
    }
    for (Gapped pane : gapped) {
      double passes = pane.passes(faces, pressure);
      ends[2 * pane.chain()] -= passes;
      ends[2 * pane.chain() + 1] += passes;
    }
    for (int room = 0; room < inner.length; room++) {
      exchange(inner[room], gains[room], faces, ends);
    }
  }

  private static double fourthPower(double celsius) {
    double kelvin = celsius + Films.KELVIN;
    double square = kelvin * kelvin;
    return square * square;
  }

  private static void exchange(Inner sides, double gains, double[] faces, double[] ends) {
    if (sides.blackSum == 0) {
      return;
    }
    double byLinear = gains;
    double byBlack = gains;
    for (int i = 0; i < sides.ends.length; i++) {
      double celsius = faces[sides.ends[i]];
      double linear = sides.linear[i] * celsius;
      double black = sides.black[i] * fourthPower(celsius);
      byLinear += linear;
      byBlack += black;
      ends[sides.ends[i]] += linear - black;
    }
    double linearMean = byLinear / sides.linearSum;
    double blackMean = byBlack / sides.blackSum;
    for (int i = 0; i < sides.ends.length; i++) {
      ends[sides.ends[i]] += sides.black[i] * blackMean - sides.linear[i] * linearMean;
    }
  }
}
