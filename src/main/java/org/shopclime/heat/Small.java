package org.shopclime.heat;

/**
 * Small square matrices, row after row: elimination without pivoting, and products with vectors.
 *
 * <p>The room-sized system of a step is solved some ten thousand times a year, and most shops have
 * two rooms; size 4 is written out, which is about three times as fast as the loops.
 */
final class Small {

  private static final int FOUR = 4;

  private Small() {}

  /**
   * Factors a matrix in its place; afterwards its diagonal holds the inverse pivots.
   *
   * @param m matrix
   * @param size rows
   * @return -1, or the first row whose pivot is not above 0
   */
  static int factor(double[] m, int size) {
    if (size == FOUR) {
      return factorFour(m);
    }
    for (int k = 0; k < size; k++) {
      double pivot = m[k * size + k];
      if (!(pivot > 0)) {
        return k;
      }
      double inverse = 1 / pivot;
      m[k * size + k] = inverse;
      for (int i = k + 1; i < size; i++) {
        double share = m[i * size + k] * inverse;
        m[i * size + k] = share;
        for (int j = k + 1; j < size; j++) {
          m[i * size + j] -= share * m[k * size + j];
        }
      }
    }
    return -1;
  }

  private static int factorFour(double[] m) {
    double inverse0 = 1 / m[0];
    double m10 = m[4] * inverse0;
    double m11 = m[5] - m10 * m[1];
    double m12 = m[6] - m10 * m[2];
    double m13 = m[7] - m10 * m[3];
    double m20 = m[8] * inverse0;
    double m21 = m[9] - m20 * m[1];
    double m22 = m[10] - m20 * m[2];
    double m23 = m[11] - m20 * m[3];
    double m30 = m[12] * inverse0;
    double m31 = m[13] - m30 * m[1];
    double m32 = m[14] - m30 * m[2];
    double m33 = m[15] - m30 * m[3];
    double inverse1 = 1 / m11;
    m21 *= inverse1;
    m22 -= m21 * m12;
    m23 -= m21 * m13;
    m31 *= inverse1;
    m32 -= m31 * m12;
    m33 -= m31 * m13;
    double inverse2 = 1 / m22;
    m32 *= inverse2;
    m33 -= m32 * m23;
    if (!(m[0] > 0 && m11 > 0 && m22 > 0 && m33 > 0)) {
      return !(m[0] > 0) ? 0 : !(m11 > 0) ? 1 : !(m22 > 0) ? 2 : 3;
    }
    m[0] = inverse0;
    m[4] = m10;
    m[5] = inverse1;
    m[6] = m12;
    m[7] = m13;
    m[8] = m20;
    m[9] = m21;
    m[10] = inverse2;
    m[11] = m23;
    m[12] = m30;
    m[13] = m31;
    m[14] = m32;
    m[15] = 1 / m33;
    return -1;
  }

  /**
   * Solves a factored system.
   *
   * @param m what {@link #factor} left
   * @param x right-hand side; afterwards the solution
   */
  static void solve(double[] m, double[] x) {
    int size = x.length;
    if (size == FOUR) {
      solveFour(m, x);
      return;
    }
    for (int k = 0; k < size; k++) {
      double known = x[k];
      for (int i = k + 1; i < size; i++) {
        x[i] -= m[i * size + k] * known;
      }
    }
    for (int k = size - 1; k >= 0; k--) {
      double sum = x[k];
      for (int j = k + 1; j < size; j++) {
        sum -= m[k * size + j] * x[j];
      }
      x[k] = sum * m[k * size + k];
    }
  }

  private static void solveFour(double[] m, double[] x) {
    double x0 = x[0];
    double x1 = x[1] - m[4] * x0;
    double x2 = x[2] - m[8] * x0 - m[9] * x1;
    double x3 = (x[3] - m[12] * x0 - m[13] * x1 - m[14] * x2) * m[15];
    x2 = (x2 - m[11] * x3) * m[10];
    x1 = (x1 - m[6] * x2 - m[7] * x3) * m[5];
    x[0] = (x0 - m[1] * x1 - m[2] * x2 - m[3] * x3) * m[0];
    x[1] = x1;
    x[2] = x2;
    x[3] = x3;
  }

  /**
   * Adds a product with a vector.
   *
   * @param m matrix
   * @param v vector
   * @param into what the product is added to
   */
  static void addProduct(double[] m, double[] v, double[] into) {
    int size = v.length;
    if (size == FOUR) {
      addProductFour(m, v, into);
      return;
    }
    for (int i = 0; i < size; i++) {
      double sum = into[i];
      for (int j = 0; j < size; j++) {
        sum += m[i * size + j] * v[j];
      }
      into[i] = sum;
    }
  }

  private static void addProductFour(double[] m, double[] v, double[] into) {
    double v0 = v[0];
    double v1 = v[1];
    double v2 = v[2];
    double v3 = v[3];
    into[0] += m[0] * v0 + m[1] * v1 + (m[2] * v2 + m[3] * v3);
    into[1] += m[4] * v0 + m[5] * v1 + (m[6] * v2 + m[7] * v3);
    into[2] += m[8] * v0 + m[9] * v1 + (m[10] * v2 + m[11] * v3);
    into[3] += m[12] * v0 + m[13] * v1 + (m[14] * v2 + m[15] * v3);
  }
}
