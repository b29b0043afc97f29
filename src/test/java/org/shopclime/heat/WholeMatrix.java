package org.shopclime.heat;

/**
 * The same physics written the plain way, to compare with: one dense matrix of all temperatures,
 * solved by Gauss with pivoting, and the two stages of Alexander's scheme as printed (slopes k).
 */
final class WholeMatrix {

  private WholeMatrix() {}

  /** Temperatures for which C rate (T - before) equals the heat into every node. */
  static double[] solve(Network n, Drivers d, double rate, double[] before) {
    int rooms = n.rooms();
    int size = n.temperatures();
    double[][] a = new double[size][size + 1];
    for (int r = 0; r < rooms; r++) {
      store(a, r, n.airCapacity[r] * rate, before[r]);
      a[r][size] += d.airSource[r];
      known(a, r, d.inflow[r], d.inflowTemperature[r]);
      for (int s = 0; s < rooms; s++) {
        double flow = d.exchange[r * rooms + s];
        a[r][r] += flow;
        a[r][s] -= flow;
      }
      int star = rooms + r;
      if (n.hasStar[r]) {
        a[star][size] += d.starSource[r];
      } else {
        a[star][star] = 1;
        a[star][r] = -1;
        a[r][size] += d.starSource[r];
      }
    }
    for (int l = 0; l < n.linkRoom.length; l++) {
      known(a, n.linkRoom[l], n.linkConductance[l], d.boundary[n.linkBoundary[l]]);
    }
    for (int k = 0; k < n.chains(); k++) {
      for (int i = n.start[k]; i < n.start[k + 1]; i++) {
        int node = 2 * rooms + i;
        store(a, node, n.capacity[i] * rate, before[node]);
        a[node][size] += d.nodeSource[i];
        if (i + 1 < n.start[k + 1]) {
          between(a, node, node + 1, n.conductance[i]);
        }
      }
      end(a, n, d, 2 * k, 2 * rooms + n.start[k]);
      end(a, n, d, 2 * k + 1, 2 * rooms + n.start[k + 1] - 1);
    }
    for (int r = 0; r < rooms; r++) {
      if (d.held[r]) {
        a[r] = new double[size + 1];
        a[r][r] = 1;
        a[r][size] = d.holdTemperature[r];
      }
    }
    return gauss(a);
  }

  /** One step: the temperatures of stage 1 and of stage 2, the end. */
  static double[][] step(Network n, Drivers d, double seconds, double[] before) {
    double gamma = 1 - 1 / Math.sqrt(2);
    double[] one = solve(n, d, 1 / (gamma * seconds), before);
    double[] from = new double[before.length];
    for (int i = 0; i < from.length; i++) {
      double slope = (one[i] - before[i]) / (gamma * seconds);
      from[i] = before[i] + (1 - gamma) * seconds * slope;
    }
    return new double[][] {one, solve(n, d, 1 / (gamma * seconds), from)};
  }

  private static void store(double[][] a, int i, double storage, double before) {
    known(a, i, storage, before);
  }

  private static void known(double[][] a, int i, double conductance, double celsius) {
    a[i][i] += conductance;
    a[i][a.length] += conductance * celsius;
  }

  private static void between(double[][] a, int i, int j, double conductance) {
    a[i][i] += conductance;
    a[j][j] += conductance;
    a[i][j] -= conductance;
    a[j][i] -= conductance;
  }

  private static void end(double[][] a, Network n, Drivers d, int e, int face) {
    a[face][a.length] += d.endSource[e];
    if (n.endBoundary[e] >= 0) {
      known(a, face, n.endOuter[e], d.boundary[n.endBoundary[e]]);
    }
    if (n.endRoom[e] >= 0) {
      between(a, face, n.endRoom[e], n.endConvective[e]);
      if (n.endRadiant[e] > 0) {
        between(a, face, n.rooms() + n.endRoom[e], n.endRadiant[e]);
      }
    }
  }

  private static double[] gauss(double[][] a) {
    int n = a.length;
    for (int k = 0; k < n; k++) {
      int best = k;
      for (int i = k + 1; i < n; i++) {
        if (Math.abs(a[i][k]) > Math.abs(a[best][k])) {
          best = i;
        }
      }
      double[] row = a[best];
      a[best] = a[k];
      a[k] = row;
      for (int i = k + 1; i < n; i++) {
        double f = a[i][k] / row[k];
        for (int j = k; j <= n; j++) {
          a[i][j] -= f * row[j];
        }
      }
    }
    double[] x = new double[n];
    for (int k = n - 1; k >= 0; k--) {
      double sum = a[k][n];
      for (int j = k + 1; j < n; j++) {
        sum -= a[k][j] * x[j];
      }
      x[k] = sum / a[k][k];
    }
    return x;
  }
}
