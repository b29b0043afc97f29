package org.shopclime.heat;

import java.util.Arrays;

/**
 * The small dense system that is left when all chains are eliminated: air and star of each room.
 *
 * <p>Row i says: ground_i x_i + sum over j of tie_ij (x_i - x_j) = drive_i, with all ties and
 * grounds 0 or more. Held rooms have the row x_i = temperature. It is factored without a single
 * subtraction, by carrying the row sums (the grounds) along instead of the diagonal: Grassmann,
 * Taksar and Heyman, Operations Research 33 (1985) 1107. So a pivot is 0 exactly when nothing fixes
 * the temperature of that part, and no digits are lost in walls with strong films.
 */
final class Core {

  private final int rooms;
  private final int size;

  /** Row of each room's star, or -1. */
  private final int[] starRow;

  private final double[] fixedTie;
  private final double[] fixedGround;

  /** With the flows of the last drivers, before rooms are held. */
  private final double[] tie;

  private final double[] ground;

  private final double[] factor;
  private final double[] carried;
  private final double[] inversePivot;

  private final LastFlows last;

  Core(Network network) {
    rooms = network.rooms();
    starRow = new int[rooms];
    int rows = rooms;
    for (int r = 0; r < rooms; r++) {
      starRow[r] = network.hasStar[r] ? rows++ : -1;
    }
    size = rows;
    fixedTie = new double[size * size];
    fixedGround = new double[size];
    tie = new double[size * size];
    ground = new double[size];
    factor = new double[size * size];
    carried = new double[size];
    inversePivot = new double[size];
    last = new LastFlows(rooms);
  }

  int size() {
    return size;
  }

  int starRow(int room) {
    return starRow[room];
  }

  /** Adds a constant tie of row i to row j; one of a row to itself says nothing. */
  void tie(int i, int j, double conductance) {
    if (i != j) {
      fixedTie[i * size + j] += conductance;
    }
  }

  /** Adds a constant conductance of row i to what is known. */
  void ground(int i, double conductance) {
    fixedGround[i] += conductance;
  }

  /** Factors for these flows and holds, unless they are those of the last call. */
  void prepare(Drivers d) {
    if (last.areThoseOf(d)) {
      return;
    }
    last.take(d);
    System.arraycopy(fixedTie, 0, tie, 0, size * size);
    System.arraycopy(fixedGround, 0, ground, 0, size);
    for (int i = 0; i < rooms; i++) {
      ground[i] += last.inflow[i];
      for (int j = 0; j < rooms; j++) {
        tie[i * size + j] += last.exchange[i * rooms + j];
      }
    }
    System.arraycopy(tie, 0, factor, 0, size * size);
    System.arraycopy(ground, 0, carried, 0, size);
    for (int i = 0; i < rooms; i++) {
      if (last.held[i]) {
        Arrays.fill(factor, i * size, (i + 1) * size, 0);
        carried[i] = 1;
      }
    }
    factor();
    last.factored();
  }

  private void factor() {
    for (int k = 0; k < size; k++) {
      double pivot = carried[k];
      for (int j = k + 1; j < size; j++) {
        pivot += factor[k * size + j];
      }
      if (!(pivot > 0)) {
        throw LastFlows.free(roomOf(k));
      }
      inversePivot[k] = 1 / pivot;
      for (int i = k + 1; i < size; i++) {
        double share = factor[i * size + k] * inversePivot[k];
        factor[i * size + k] = share;
        if (share != 0) {
          carried[i] += share * carried[k];
          // This also adds to the row's own place, which is never read.
          for (int j = k + 1; j < size; j++) {
            factor[i * size + j] += share * factor[k * size + j];
          }
        }
      }
    }
  }

  private int roomOf(int row) {
    if (row < rooms) {
      return row;
    }
    for (int r = 0; r < rooms; r++) {
      if (starRow[r] == row) {
        return r;
      }
    }
    throw new IllegalStateException("no room has row " + row);
  }

  /**
   * Solves for the flows and holds last prepared.
   *
   * @param x the drives (temperatures in the rows of held rooms); afterwards the temperatures
   */
  void solve(double[] x) {
    for (int k = 0; k < size; k++) {
      double known = x[k];
      for (int i = k + 1; i < size; i++) {
        x[i] += factor[i * size + k] * known;
      }
    }
    for (int k = size - 1; k >= 0; k--) {
      double sum = x[k];
      for (int j = k + 1; j < size; j++) {
        sum += factor[k * size + j] * x[j];
      }
      x[k] = sum * inversePivot[k];
    }
  }

  /** Heat that row i lacks, W, at temperatures x under its drive: the plant of a held room. */
  double missing(int i, double[] x, double drive) {
    double heat = ground[i] * x[i] - drive;
    for (int j = 0; j < size; j++) {
      heat += tie[i * size + j] * (x[i] - x[j]);
    }
    return heat;
  }
}
