package org.shopclime.balance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.shopclime.envelope.Films;
import org.shopclime.heat.FaceTemperatures;

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

  /**
   * An outer face, which is the left end of its chain. What it lacks is a + b T - c (T in K)⁴.
   *
   * @param chain number of its chain
   * @param a W
   * @param b W/K
   * @param c W/K⁴
   */
  private record Outer(int chain, double a, double b, double c) {

    /** A face of so many m² of black, made linear at a mean temperature, °C. */
    static Outer of(int chain, double black, double mean) {
      double slope = black * Films.radiative(1, mean);
      return new Outer(chain, black * Films.radiated(1, mean) - slope * mean, slope, fourth(black));
    }
  }

  /**
   * A side towards a room.
   *
   * @param end 2 k for the left, 2 k + 1 for the right end of chain k
   * @param black that of a black face that exchanges as much, W/K⁴
   * @param linear its radiant conductance in the network, W/K
   */
  private record Inner(int end, double black, double linear) {

    double celsius(FaceTemperatures faces) {
      return end % 2 == 0 ? faces.leftFace(end / 2) : faces.rightFace(end / 2);
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
    double passes(FaceTemperatures faces, double pressure) {
      double left = faces.leftFace(chain);
      double right = faces.rightFace(chain);
      return area * (gaps.conductance(left, right, pressure) - rated) * (left - right);
    }
  }

  private final double pressure;
  private final Gapped[] gapped;
  private final Outer[] outer;
  private final Inner[][] inner;

  TrueRadiation(Skeleton skeleton, NetworkMaker maker, Linearisation at, double pressure) {
    this.pressure = pressure;
    List<Gapped> panes = new ArrayList<>();
    List<Outer> outdoorFaces = new ArrayList<>();
    List<List<Inner>> sides = new ArrayList<>();
    skeleton.rooms().forEach(room -> sides.add(new ArrayList<>()));
    for (int chain = 0; chain < skeleton.pieces().size(); chain++) {
      Piece piece = skeleton.pieces().get(chain);
      if (piece.gaps().isPresent()) {
        double rated = piece.nodes().conductance(0);
        panes.add(new Gapped(chain, piece.area(), rated, piece.gaps().get()));
      }
      if (piece.outside() instanceof Piece.Outdoors outdoors) {
        outdoorFaces.add(Outer.of(chain, outdoors.emittance() * piece.area(), at.left(chain)));
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
    outer = outdoorFaces.toArray(Outer[]::new);
    inner = sides.stream().map(side -> side.toArray(Inner[]::new)).toArray(Inner[][]::new);
  }

  private static Inner side(int end, double black, double face, double star) {
    return new Inner(end, fourth(black), black * Films.radiative(1, (face + star) / 2));
  }

  /** What so many m² of black give off for each K⁴, W. */
  private static double fourth(double black) {
    return black * Films.STEFAN_BOLTZMANN;
  }

  /**
   * Tells the differences of all chains.
   *
   * @param faces temperatures of the faces
   * @param gains radiant gains of each room, W
   * @param ends set to the heat on the left (2 k) and right (2 k + 1) face of chain k, W
   */
  void find(FaceTemperatures faces, double[] gains, double[] ends) {
    Arrays.fill(ends, 0);
    for (Outer face : outer) {
      double celsius = faces.leftFace(face.chain);
      ends[2 * face.chain] = face.a + face.b * celsius - face.c * fourthPower(celsius);
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

  private static void exchange(Inner[] sides, double gains, FaceTemperatures faces, double[] ends) {
    double linear = 0;
    double linearSum = gains;
    double black = 0;
    double blackSum = gains;
    for (Inner side : sides) {
      double celsius = side.celsius(faces);
      linear += side.linear;
      linearSum += side.linear * celsius;
      black += side.black;
      blackSum += side.black * fourthPower(celsius);
    }
    if (black == 0) {
      return;
    }
    double linearMean = linearSum / linear;
    double blackMean = blackSum / black;
    for (Inner side : sides) {
      double celsius = side.celsius(faces);
      ends[side.end] +=
          side.black * (blackMean - fourthPower(celsius)) - side.linear * (linearMean - celsius);
    }
  }
}
