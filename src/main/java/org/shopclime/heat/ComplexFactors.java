package org.shopclime.heat;

/** A small complex matrix factored by elimination, the largest of a column first. */
final class ComplexFactors {

  private final int size;
  private final double[] re;
  private final double[] im;
  private final int[] from;

  /**
   * Factors a matrix in place.
   *
   * @param size rows and columns
   * @param re real parts, row by row; taken over
   * @param im imaginary parts; taken over
   * @throws IllegalStateException if the matrix is singular
   */
  ComplexFactors(int size, double[] re, double[] im) {
    this.size = size;
    this.re = re;
    this.im = im;
    from = new int[size];
    for (int k = 0; k < size; k++) {
      exchange(k, largest(k));
      eliminate(k);
    }
  }

  private int largest(int k) {
    int best = k;
    double most = -1;
    for (int i = k; i < size; i++) {
      double square = re[i * size + k] * re[i * size + k] + im[i * size + k] * im[i * size + k];
      if (square > most) {
        most = square;
        best = i;
      }
    }
    if (!(most > 0)) {
      throw new IllegalStateException("nothing fixes the temperature of a room or its star");
    }
    return best;
  }

  private void exchange(int k, int other) {
    from[k] = other;
    if (other != k) {
      for (int j = 0; j < size; j++) {
        double real = re[k * size + j];
        double imaginary = im[k * size + j];
        re[k * size + j] = re[other * size + j];
        im[k * size + j] = im[other * size + j];
        re[other * size + j] = real;
        im[other * size + j] = imaginary;
      }
    }
  }

  private void eliminate(int k) {
    int row = k * size;
    double square = re[row + k] * re[row + k] + im[row + k] * im[row + k];
    double inverseRe = re[row + k] / square;
    double inverseIm = -im[row + k] / square;
    re[row + k] = inverseRe;
    im[row + k] = inverseIm;
    for (int i = k + 1; i < size; i++) {
      int below = i * size;
      double shareRe = re[below + k] * inverseRe - im[below + k] * inverseIm;
      double shareIm = re[below + k] * inverseIm + im[below + k] * inverseRe;
      re[below + k] = shareRe;
      im[below + k] = shareIm;
      for (int j = k + 1; j < size; j++) {
        re[below + j] -= shareRe * re[row + j] - shareIm * im[row + j];
        im[below + j] -= shareRe * im[row + j] + shareIm * re[row + j];
      }
    }
  }

  /** Solves in place. */
  void solve(double[] xRe, double[] xIm) {
    for (int k = 0; k < size; k++) {
      int other = from[k];
      double real = xRe[other];
      double imaginary = xIm[other];
      xRe[other] = xRe[k];
      xIm[other] = xIm[k];
      xRe[k] = real;
      xIm[k] = imaginary;
    }
    for (int i = 1; i < size; i++) {
      take(xRe, xIm, i, 0, i);
    }
    for (int i = size - 1; i >= 0; i--) {
      take(xRe, xIm, i, i + 1, size);
      double real = xRe[i];
      xRe[i] = real * re[i * size + i] - xIm[i] * im[i * size + i];
      xIm[i] = real * im[i * size + i] + xIm[i] * re[i * size + i];
    }
  }

  private void take(double[] xRe, double[] xIm, int i, int first, int end) {
    double real = xRe[i];
    double imaginary = xIm[i];
    for (int j = first; j < end; j++) {
      real -= re[i * size + j] * xRe[j] - im[i * size + j] * xIm[j];
      imaginary -= re[i * size + j] * xIm[j] + im[i * size + j] * xRe[j];
    }
    xRe[i] = real;
    xIm[i] = imaginary;
  }
}
