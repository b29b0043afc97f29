package org.shopclime.heat;

import java.util.Arrays;

/**
 * A chain as a sum of modes that know nothing of each other: z' = -rate z + left u_left + right
 * u_right, and the faces at T_left = sum left z + d_ll u_left + d_lr u_right, T_right likewise.
 *
 * <p>u is what drives an end, W: its conductances times what they see, and its sources. Nodes
 * without capacity are condensed out exactly. The modes are those of the symmetric tridiagonal
 * matrix C^-1/2 K C^-1/2, found by the implicit QL method (J. H. Wilkinson and C. Reinsch, Handbook
 * for Automatic Computation II, Springer 1971, II/3 and II/4), of whose vectors only the rows asked
 * for are carried. Modes faster than {@value #FASTEST} s, and modes of no weight, follow at once:
 * they are kept as their share of the d. Heat is kept exactly by what is left, as every mode's
 * steady share is.
 */
final class ChainModes {

  /** Time constant of the fastest mode kept, s. */
  static final double FASTEST = 20;

  /** Share of both faces' steady answers below which a mode follows at once. */
  private static final double NO_WEIGHT = 1e-6;

  private static final int MOST_ROUNDS = 60;

  /** 1/s, by mode. */
  final double[] rate;

  final double[] left;
  final double[] right;

  /** Heat a mode holds for each unit of it, J; also its size in a chain that is at 1 °C. */
  final double[] stored;

  /** Size of each mode in each node that has a capacity, times the root of that; or empty. */
  final double[][] shapes;

  final double leftToLeft;
  final double leftToRight;
  final double rightToRight;

  private ChainModes(
      double[] rate,
      double[] left,
      double[] right,
      double[] stored,
      double[][] shapes,
      double leftToLeft,
      double leftToRight,
      double rightToRight) {
    this.rate = rate;
    this.left = left;
    this.right = right;
    this.stored = stored;
    this.shapes = shapes;
    this.leftToLeft = leftToLeft;
    this.leftToRight = leftToRight;
    this.rightToRight = rightToRight;
  }

  int count() {
    return rate.length;
  }

  /**
   * The modes of a chain.
   *
   * @param network the network
   * @param chain number of the chain
   * @param shaped whether the shapes are wanted, to hand over to the modes of another network
   */
  static ChainModes of(Network network, int chain, boolean shaped) {
    int first = network.start[chain];
    int last = network.start[chain + 1] - 1;
    int from = first;
    int to = last;
    while (from <= last && network.capacity[from] == 0) {
      from++;
    }
    while (to >= first && network.capacity[to] == 0) {
      to--;
    }
    double leftOuter = endConductance(network, 2 * chain);
    double rightOuter = endConductance(network, 2 * chain + 1);
    if (from > to) {
      return massless(leftOuter, series(network, first, last), rightOuter);
    }
    Side leftSide = Side.of(leftOuter, series(network, first, from));
    Side rightSide = Side.of(rightOuter, series(network, to, last));
    return new Eigen(network, from, to, leftSide, rightSide, shaped).modes();
  }

  private static double endConductance(Network network, int e) {
    return network.endOuter[e] + network.endConvective[e] + network.endRadiant[e];
  }

  /** Conductance from one node to another through what lies between; endless to itself. */
  private static double series(Network network, int from, int to) {
    double resistance = 0;
    for (int i = from; i < to; i++) {
      resistance += 1 / network.conductance[i];
    }
    return 1 / resistance;
  }

  private static ChainModes massless(double leftOuter, double through, double rightOuter) {
    double resistance = 1 / through;
    double sum = leftOuter + rightOuter + leftOuter * rightOuter * resistance;
    return new ChainModes(
        new double[0],
        new double[0],
        new double[0],
        new double[0],
        new double[0][],
        (1 + rightOuter * resistance) / sum,
        1 / sum,
        (1 + leftOuter * resistance) / sum);
  }

  /**
   * What lies before the first node with a capacity.
   *
   * @param conductance from that node to what the end sees, W/K
   * @param share share of the node in the face's temperature, and of the drive that reaches it
   * @param direct answer of the face itself to its drive, K/W
   */
  private record Side(double conductance, double share, double direct) {

    static Side of(double outer, double series) {
      if (Double.isInfinite(series)) {
        return new Side(outer, 1, 0);
      }
      double sum = outer + series;
      return new Side(outer * series / sum, series / sum, 1 / sum);
    }
  }

  /** The eigenvalues of one chain, with the rows of the vectors that are asked for. */
  private static final class Eigen {

    private final int size;
    private final double[] diagonal;
    private final double[] beside;
    private final double[][] rows;
    private final Side leftSide;
    private final Side rightSide;
    private final double firstRoot;
    private final double lastRoot;

    Eigen(Network network, int from, int to, Side left, Side right, boolean shaped) {
      leftSide = left;
      rightSide = right;
      int[] nodes = new int[to - from + 1];
      int count = 0;
      for (int i = from; i <= to; i++) {
        if (network.capacity[i] > 0) {
          nodes[count++] = i;
        }
      }
      size = count;
      diagonal = new double[size];
      beside = new double[size];
      double[] root = new double[size];
      for (int i = 0; i < size; i++) {
        root[i] = Math.sqrt(network.capacity[nodes[i]]);
      }
      diagonal[0] = left.conductance();
      diagonal[size - 1] += right.conductance();
      for (int i = 0; i + 1 < size; i++) {
        double g = series(network, nodes[i], nodes[i + 1]);
        diagonal[i] += g;
        diagonal[i + 1] += g;
        beside[i] = -g / (root[i] * root[i + 1]);
      }
      for (int i = 0; i < size; i++) {
        diagonal[i] /= root[i] * root[i];
      }
      firstRoot = root[0];
      lastRoot = root[size - 1];
      rows = new double[shaped ? 3 + size : 3][size];
      rows[0][0] = 1;
      rows[1][size - 1] = 1;
      rows[2] = root;
      for (int i = 3; i < rows.length; i++) {
        rows[i][i - 3] = 1;
      }
      findAll();
    }

    private void findAll() {
      for (int l = 0; l < size; l++) {
        int round = 0;
        int m = split(l);
        while (m != l) {
          if (round++ == MOST_ROUNDS) {
            throw new ArithmeticException("no modes found for a chain of " + size + " nodes");
          }
          sweep(l, m);
          m = split(l);
        }
      }
    }

    /** Where the matrix falls apart behind l. */
    private int split(int l) {
      int m = l;
      while (m < size - 1) {
        double sum = Math.abs(diagonal[m]) + Math.abs(diagonal[m + 1]);
        if (Math.abs(beside[m]) <= Math.ulp(sum) / 2) {
          return m;
        }
        m++;
      }
      return m;
    }

    /** One implicit QL step on the part from l to m. */
    private void sweep(int l, int m) {
      double g = (diagonal[l + 1] - diagonal[l]) / (2 * beside[l]);
      double r = Math.hypot(g, 1);
      g = diagonal[m] - diagonal[l] + beside[l] / (g + Math.copySign(r, g));
      double s = 1;
      double c = 1;
      double p = 0;
      for (int i = m - 1; i >= l; i--) {
        double f = s * beside[i];
        double b = c * beside[i];
        r = Math.sqrt(f * f + g * g);
        beside[i + 1] = r;
        if (r == 0) {
          diagonal[i + 1] -= p;
          beside[m] = 0;
          return;
        }
        s = f / r;
        c = g / r;
        g = diagonal[i + 1] - p;
        r = (diagonal[i] - g) * s + 2 * c * b;
        p = s * r;
        diagonal[i + 1] = g + p;
        g = c * r - b;
        for (double[] row : rows) {
          double high = row[i + 1];
          row[i + 1] = s * row[i] + c * high;
          row[i] = c * row[i] - s * high;
        }
      }
      diagonal[l] -= p;
      beside[l] = g;
      beside[m] = 0;
    }

    ChainModes modes() {
      double leftFactor = leftSide.share() / firstRoot;
      double rightFactor = rightSide.share() / lastRoot;
      double leftSteady = leftSide.direct();
      double rightSteady = rightSide.direct();
      boolean[] kept = new boolean[size];
      for (int m = 0; m < size; m++) {
        leftSteady += steady(leftFactor * rows[0][m], m);
        rightSteady += steady(rightFactor * rows[1][m], m);
      }
      int count = 0;
      for (int m = 0; m < size; m++) {
        kept[m] =
            diagonal[m] * FASTEST <= 1
                && (steady(leftFactor * rows[0][m], m) > NO_WEIGHT * leftSteady
                    || steady(rightFactor * rows[1][m], m) > NO_WEIGHT * rightSteady);
        count += kept[m] ? 1 : 0;
      }
      double[] rate = new double[count];
      double[] left = new double[count];
      double[] right = new double[count];
      double[] stored = new double[count];
      double[][] shapes = new double[count][];
      double leftToLeft = leftSide.direct();
      double leftToRight = 0;
      double rightToRight = rightSide.direct();
      int k = 0;
      for (int m = 0; m < size; m++) {
        double l = leftFactor * rows[0][m];
        double r = rightFactor * rows[1][m];
        if (kept[m]) {
          rate[k] = Math.max(0, diagonal[m]);
          left[k] = l;
          right[k] = r;
          stored[k] = rows[2][m];
          shapes[k] = shape(m);
          k++;
        } else {
          leftToLeft += l * l / diagonal[m];
          leftToRight += l * r / diagonal[m];
          rightToRight += r * r / diagonal[m];
        }
      }
      return new ChainModes(
          rate, left, right, stored, shapes, leftToLeft, leftToRight, rightToRight);
    }

    private double[] shape(int m) {
      double[] shape = new double[rows.length - 3];
      Arrays.setAll(shape, i -> rows[3 + i][m]);
      return shape;
    }

    private double steady(double factor, int m) {
      return factor * factor / Math.max(diagonal[m], 1e-12);
    }
  }
}
