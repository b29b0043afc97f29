package org.shopclime.load;

/** A square matrix factored by elimination, the largest of a column first. */
final class Factors {

  private final double[][] columns;
  private final int[] from;

  /**
   * Factors a matrix in place.
   *
   * @param rows the matrix, row by row; used up
   */
  Factors(double[][] rows) {
    columns = new double[rows.length][rows.length];
    from = new int[rows.length];
    for (int k = 0; k < rows.length; k++) {
      int best = k;
      for (int i = k + 1; i < rows.length; i++) {
        if (Math.abs(rows[i][k]) > Math.abs(rows[best][k])) {
          best = i;
        }
      }
      from[k] = best;
      double[] row = rows[best];
      rows[best] = rows[k];
      rows[k] = row;
      for (int i = k + 1; i < rows.length; i++) {
        double[] below = rows[i];
        double share = below[k] / row[k];
        below[k] = share;
        for (int j = k + 1; j < below.length; j++) {
          below[j] -= share * row[j];
        }
      }
    }
    for (int i = 0; i < rows.length; i++) {
      for (int j = 0; j < rows.length; j++) {
        columns[j][i] = rows[i][j];
      }
    }
  }

  /** Solves in place. */
  void solve(double[] x) {
    for (int k = 0; k < x.length; k++) {
      double swapped = x[from[k]];
      x[from[k]] = x[k];
      x[k] = swapped;
    }
    for (int k = 0; k < x.length; k++) {
      take(x, k, k + 1, x.length);
    }
    for (int k = x.length - 1; k >= 0; k--) {
      x[k] /= columns[k][k];
      take(x, k, 0, k);
    }
  }

  private void take(double[] x, int k, int first, int end) {
    double[] column = columns[k];
    double known = x[k];
    for (int i = first; i < end; i++) {
      x[i] -= column[i] * known;
    }
  }
}
