package org.shopclime.heat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A chain as a sum of modes that know nothing of each other: z' = -rate z + left u_left + right
 * u_right, and the faces at T_left = sum left z + d_ll u_left + d_lr u_right, T_right likewise.
 *
 * <p>u is what drives an end, W: its conductances times what they see, and its sources. Nodes
 * without capacity are condensed out exactly. The modes are those of the symmetric tridiagonal
 * matrix C^-1/2 K C^-1/2, found by the implicit QL method (J. H. Wilkinson and C. Reinsch, Handbook
 * for Automatic Computation II, Springer 1971, II/3 and II/4), of whose vectors only the rows asked
 * for are carried.
 *
 * <p>Modes faster than {@value #TOGETHER} s are put together into two at most, with the same steady
 * answers and the same lags (first moments) between both faces; those of them faster than {@value
 * #FASTEST} s follow at once. Heat is kept exactly by what is left, as steady answers are.
 */
final class ChainModes {

  /** Time constant of the fastest mode kept, s. */
  static final double FASTEST = 20;

  /** Time constant up to which modes are put together, s. */
  static final double TOGETHER = 600;

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

  /** What the modes put together were, where shapes are wanted; else nothing. */
  private final FastModes fast;

  private ChainModes(
      double[] rate,
      double[] left,
      double[] right,
      double[] stored,
      double[][] shapes,
      double leftToLeft,
      double leftToRight,
      double rightToRight,
      FastModes fast) {
    this.rate = rate;
    this.left = left;
    this.right = right;
    this.stored = stored;
    this.shapes = shapes;
    this.leftToLeft = leftToLeft;
    this.leftToRight = leftToRight;
    this.rightToRight = rightToRight;
    this.fast = fast;
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
        (1 + leftOuter * resistance) / sum,
        new FastModes());
  }

  /**
   * Temperatures of the nodes, times the roots of their capacities.
   *
   * @param sizes sizes of modes, those of this chain from {@code at} on
   * @param at where they begin
   * @param leftDrive what drives the left end, W; the modes put together have followed it
   * @param rightDrive what drives the right end, W
   */
  double[] nodes(double[] sizes, int at, double leftDrive, double rightDrive) {
    double[] nodes = fast.nodes(leftDrive, rightDrive);
    for (int m = 0; m < count(); m++) {
      for (int i = 0; i < shapes[m].length; i++) {
        nodes[i] += sizes[at + m] * shapes[m][i];
      }
    }
    return nodes;
  }

  /**
   * Sizes of the modes from the temperatures of the nodes. Modes put together get sizes with which
   * the faces are as the modes make them for which they stand.
   *
   * @param nodes as {@link #nodes}
   * @param into set to the sizes from {@code at} on
   * @param at where they begin
   */
  void take(double[] nodes, double[] into, int at) {
    int first = -1;
    int second = -1;
    for (int m = 0; m < count(); m++) {
      if (shapes[m].length > 0) {
        into[at + m] = FastModes.product(shapes[m], nodes);
      } else if (first < 0) {
        first = m;
      } else {
        second = m;
      }
    }
    if (first >= 0) {
      double[] faces = fast.faces(nodes);
      double[] beside = second >= 0 ? new double[] {left[second], right[second]} : fast.direction();
      double across = left[first] * beside[1] - right[first] * beside[0];
      boolean alone = beside[0] == 0 && beside[1] == 0;
      into[at + first] =
          alone
              ? (left[first] * faces[0] + right[first] * faces[1])
                  / (left[first] * left[first] + right[first] * right[first])
              : (faces[0] * beside[1] - faces[1] * beside[0]) / across;
      if (second >= 0) {
        into[at + second] = (left[first] * faces[1] - right[first] * faces[0]) / across;
      }
    }
  }

  /**
   * What lies before the first node with a capacity.
   *
   * @param outer from the face to what it sees, W/K
   * @param conductance from that node to what the end sees, W/K
   * @param share share of the node in the face's temperature, and of the drive that reaches it
   * @param direct answer of the face itself to its drive, K/W
   */
  private record Side(double outer, double conductance, double share, double direct) {

    static Side of(double outer, double series) {
      if (Double.isInfinite(series)) {
        return new Side(outer, outer, 1, 0);
      }
      double sum = outer + series;
      return new Side(outer, outer * series / sum, series / sum, 1 / sum);
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
      Kept kept = new Kept(leftSide, rightSide, rows.length > 3 ? size : 0);
      Band fast = new Band();
      for (int m = 0; m < size; m++) {
        double l = leftFactor * rows[0][m];
        double r = rightFactor * rows[1][m];
        if (diagonal[m] * TOGETHER > 1) {
          fast.add(diagonal[m], l, r);
          if (rows.length > 3) {
            kept.fast.add(diagonal[m], l, r, shape(m));
          }
        } else {
          kept.add(Math.max(0, diagonal[m]), l, r, rows[2][m], shape(m));
        }
      }
      fast.giveTo(kept);
      return kept.modes();
    }

    private double[] shape(int m) {
      double[] shape = new double[rows.length - 3];
      Arrays.setAll(shape, i -> rows[3 + i][m]);
      return shape;
    }
  }

  /** The fast modes, as sums of products of their weights at the faces over rates. */
  private static final class Band {
    private static final double ALIKE = 1e-10;

    private final double[] steady = new double[3];
    private final double[] lag = new double[3];
    private int count;

    void add(double rate, double left, double right) {
      double[] products = {left * left, left * right, right * right};
      for (int i = 0; i < 3; i++) {
        steady[i] += products[i] / rate;
        lag[i] += products[i] / (rate * rate);
      }
      count++;
    }

    /** One or two modes with the same steady answers and the same lags at both faces. */
    void giveTo(Kept kept) {
      if (count == 0) {
        return;
      }
      boolean turned = steady[2] > steady[0];
      double first = turned ? steady[2] : steady[0];
      double last = turned ? steady[0] : steady[2];
      if (!(first > 0)) {
        return;
      }
      // Steady answers are G G' with G = [a 0; b c]; lags in these terms, and their main axes.
      double a = Math.sqrt(first);
      double b = steady[1] / a;
      double rest = last - b * b;
      double lagFirst = (turned ? lag[2] : lag[0]) / first;
      if (!(rest > ALIKE * first)) {
        put(kept, turned, 1 / lagFirst, a, b);
        return;
      }
      double c = Math.sqrt(rest);
      double lagAcross = (lag[1] / a - b * lagFirst) / c;
      double lagLast =
          ((turned ? lag[0] : lag[2]) - 2 * b * c * lagAcross - b * b * lagFirst) / rest;
      double angle = 0.5 * Math.atan2(2 * lagAcross, lagFirst - lagLast);
      double cos = Math.cos(angle);
      double sin = Math.sin(angle);
      double one = lagFirst * cos * cos + 2 * lagAcross * sin * cos + lagLast * sin * sin;
      double other = lagFirst * sin * sin - 2 * lagAcross * sin * cos + lagLast * cos * cos;
      put(kept, turned, 1 / one, a * cos, b * cos + c * sin);
      put(kept, turned, 1 / other, -a * sin, c * cos - b * sin);
    }

    private static void put(Kept kept, boolean turned, double rate, double one, double other) {
      double root = Math.sqrt(rate);
      kept.add(rate, root * (turned ? other : one), root * (turned ? one : other));
    }
  }

  /** Collects the modes that are kept. */
  private static final class Kept {
    private final List<double[]> modes = new ArrayList<>();
    private final List<double[]> shapes = new ArrayList<>();
    private final double leftOuter;
    private final double rightOuter;
    private double leftDirect;
    private double across;
    private double rightDirect;
    private final FastModes fast;

    Kept(Side left, Side right, int nodes) {
      fast = new FastModes(nodes);
      leftOuter = left.outer();
      rightOuter = right.outer();
      leftDirect = left.direct();
      rightDirect = right.direct();
    }

    void add(double rate, double left, double right, double stored, double[] shape) {
      modes.add(new double[] {rate, left, right, stored});
      shapes.add(shape);
    }

    /** Adds a mode that stands for several: what it holds follows from what it lets go. */
    void add(double rate, double left, double right) {
      if (rate * FASTEST > 1) {
        leftDirect += left * left / rate;
        across += left * right / rate;
        rightDirect += right * right / rate;
        fast.direct(left, right);
      } else {
        double stored = (leftOuter * left + rightOuter * right) / rate;
        add(rate, left, right, stored, new double[0]);
      }
    }

    ChainModes modes() {
      double[][] columns = new double[4][modes.size()];
      for (int m = 0; m < modes.size(); m++) {
        for (int i = 0; i < 4; i++) {
          columns[i][m] = modes.get(m)[i];
        }
      }
      return new ChainModes(
          columns[0],
          columns[1],
          columns[2],
          columns[3],
          shapes.toArray(double[][]::new),
          leftDirect,
          across,
          rightDirect,
          fast);
    }
  }
}
