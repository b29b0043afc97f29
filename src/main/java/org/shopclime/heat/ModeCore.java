package org.shopclime.heat;

import java.util.Arrays;

/**
 * Air and star of all rooms over one length of step, all chains eliminated. Each has a mean and a
 * tilt over the step: T = T0 + T1 P1; places 2 r and 2 r + 1 of the vectors are those of room r.
 * The stars are eliminated too, as no flow of air and no hold changes them.
 */
final class ModeCore {

  private static final double THIRD = 1.0 / 3;

  private final int rooms;
  private final int size;

  /** Rows of the air with the stars eliminated, without flows. */
  private final double[] base;

  /** What the drives of the stars do to those of the air. */
  private final double[] starToAir;

  /** Stars from their drives and from the air. */
  private final double[] starOfDrive;

  private final double[] starOfAir;

  private final double[] rows;
  private final double[] factor;
  private final LastFlows last;

  /**
   * Eliminates the stars.
   *
   * @param rooms number of rooms
   * @param airAir what the air of rooms takes from the air, size 2 rooms squared, W/K
   * @param airStar what it takes from the stars
   * @param starAir what the stars take from the air
   * @param starStar what the stars take from the stars
   */
  ModeCore(int rooms, double[] airAir, double[] airStar, double[] starAir, double[] starStar) {
    this.rooms = rooms;
    size = 2 * rooms;
    starOfDrive = inverse(starStar, size);
    starOfAir = product(starOfDrive, starAir);
    negate(starOfAir);
    starToAir = product(airStar, starOfDrive);
    double[] through = product(airStar, starOfAir);
    base = airAir.clone();
    for (int i = 0; i < base.length; i++) {
      base[i] += through[i];
    }
    negate(starToAir);
    rows = new double[size * size];
    factor = new double[size * size];
    last = new LastFlows(rooms);
  }

  private double[] product(double[] one, double[] other) {
    double[] product = new double[size * size];
    for (int i = 0; i < size; i++) {
      for (int k = 0; k < size; k++) {
        for (int j = 0; j < size; j++) {
          product[i * size + j] += one[i * size + k] * other[k * size + j];
        }
      }
    }
    return product;
  }

  private static void negate(double[] matrix) {
    for (int i = 0; i < matrix.length; i++) {
      matrix[i] = -matrix[i];
    }
  }

  /** Inverse by elimination with the largest pivots of each column. */
  private static double[] inverse(double[] matrix, int size) {
    double[] a = matrix.clone();
    double[] inverse = new double[size * size];
    for (int i = 0; i < size; i++) {
      inverse[i * size + i] = 1;
    }
    for (int k = 0; k < size; k++) {
      int pivot = k;
      for (int i = k + 1; i < size; i++) {
        if (Math.abs(a[i * size + k]) > Math.abs(a[pivot * size + k])) {
          pivot = i;
        }
      }
      swap(a, size, k, pivot);
      swap(inverse, size, k, pivot);
      double scale = 1 / a[k * size + k];
      for (int j = 0; j < size; j++) {
        a[k * size + j] *= scale;
        inverse[k * size + j] *= scale;
      }
      for (int i = 0; i < size; i++) {
        double share = a[i * size + k];
        if (i != k && share != 0) {
          for (int j = 0; j < size; j++) {
            a[i * size + j] -= share * a[k * size + j];
            inverse[i * size + j] -= share * inverse[k * size + j];
          }
        }
      }
    }
    return inverse;
  }

  private static void swap(double[] matrix, int size, int one, int other) {
    for (int j = 0; one != other && j < size; j++) {
      double kept = matrix[one * size + j];
      matrix[one * size + j] = matrix[other * size + j];
      matrix[other * size + j] = kept;
    }
  }

  /** Factors for these flows and holds, unless they are those of the last call. */
  void prepare(Drivers d) {
    if (last.areThoseOf(d)) {
      return;
    }
    last.take(d);
    System.arraycopy(base, 0, rows, 0, base.length);
    for (int r = 0; r < rooms; r++) {
      double out = last.inflow[r];
      for (int j = 0; j < rooms; j++) {
        double flow = last.exchange[r * rooms + j];
        if (flow != 0) {
          out += flow;
          rows[2 * r * size + 2 * j] -= flow;
          rows[(2 * r + 1) * size + 2 * j + 1] -= flow / 3;
        }
      }
      rows[2 * r * size + 2 * r] += out;
      rows[(2 * r + 1) * size + 2 * r + 1] += out * THIRD;
    }
    System.arraycopy(rows, 0, factor, 0, rows.length);
    for (int r = 0; r < rooms; r++) {
      if (last.held[r]) {
        Arrays.fill(factor, 2 * r * size, (2 * r + 2) * size, 0);
        factor[2 * r * size + 2 * r] = 1;
        factor[(2 * r + 1) * size + 2 * r + 1] = 1;
      }
    }
    factor();
    last.factored();
  }

  private void factor() {
    int row = Small.factor(factor, size);
    if (row >= 0) {
      throw LastFlows.free(row / 2);
    }
  }

  /** Adds to the drives of the air what those of the stars do to it. */
  void addStars(double[] starDrive, double[] airDrive) {
    Small.addProduct(starToAir, starDrive, airDrive);
  }

  /**
   * Solves for the flows and holds last prepared.
   *
   * @param x drives of the air (temperature and 0 for held rooms); afterwards the air
   */
  void solve(double[] x) {
    Small.solve(factor, x);
  }

  /** The stars under their drives, with the air as it is. */
  void stars(double[] starDrive, double[] air, double[] stars) {
    Arrays.fill(stars, 0);
    Small.addProduct(starOfDrive, starDrive, stars);
    Small.addProduct(starOfAir, air, stars);
  }

  /** Heat a held room lacks, mean over the step, W. */
  double missing(int room, double[] air, double[] airDrive) {
    return missingIn(2 * room, air, airDrive);
  }

  /** First moment of that heat over the step, W. */
  double missingTilt(int room, double[] air, double[] airDrive) {
    return missingIn(2 * room + 1, air, airDrive);
  }

  private double missingIn(int row, double[] air, double[] airDrive) {
    double heat = -airDrive[row];
    for (int j = 0; j < size; j++) {
      heat += rows[row * size + j] * air[j];
    }
    return heat;
  }
}
