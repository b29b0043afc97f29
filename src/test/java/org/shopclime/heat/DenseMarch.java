package org.shopclime.heat;

import java.util.Arrays;

/**
 * The scheme of {@link March} with dense matrices: one factorisation by Gauss with row exchanges,
 * then two back-substitutions for each step. Columns lie together, so that the compiler can take
 * several rows at once.
 */
public final class DenseMarch {

  private static final double GAMMA = 1 - Math.sqrt(0.5);

  private final DenseNetwork network;
  private final double[] storage;

  /** Column after column: multipliers below the diagonal, the triangle from it upward. */
  private final double[][] column;

  /** Row that stands in each place. */
  private final int[] row;

  private final double[] heat;
  private final double[] right;
  private final double[] stage;
  private final double[] from;
  private final double[] now;

  /**
   * Factors a network.
   *
   * @param network network
   * @param flows whose air flows and holds count, for all steps
   * @param seconds length of a step, s
   */
  public DenseMarch(Network network, Drivers flows, double seconds) {
    this.network = new DenseNetwork(network, flows);
    int size = this.network.size();
    storage = new double[size];
    column = new double[size][size];
    for (int i = 0; i < size; i++) {
      storage[i] = this.network.capacity[i] / (GAMMA * seconds);
      for (int j = 0; j < size; j++) {
        column[j][i] = this.network.conductance[i][j];
      }
      column[i][i] += storage[i];
    }
    row = new int[size];
    heat = new double[size];
    right = new double[size];
    stage = new double[size];
    from = new double[size];
    now = new double[size];
    factor();
  }

  private void factor() {
    int size = row.length;
    for (int i = 0; i < size; i++) {
      row[i] = i;
    }
    for (int k = 0; k < size; k++) {
      int best = k;
      for (int i = k + 1; i < size; i++) {
        if (Math.abs(column[k][i]) > Math.abs(column[k][best])) {
          best = i;
        }
      }
      exchange(k, best);
      double[] pivot = column[k];
      for (int i = k + 1; i < size; i++) {
        pivot[i] /= pivot[k];
      }
      for (int j = k + 1; j < size; j++) {
        subtract(column[j], column[j][k], pivot, k + 1, size);
      }
    }
  }

  private void exchange(int i, int j) {
    int place = row[i];
    row[i] = row[j];
    row[j] = place;
    for (double[] each : column) {
      double value = each[i];
      each[i] = each[j];
      each[j] = value;
    }
  }

  private static void subtract(double[] of, double times, double[] what, int first, int end) {
    for (int i = first; i < end; i++) {
      of[i] -= times * what[i];
    }
  }

  private void solve(double[] before, double[] out) {
    int size = row.length;
    for (int i = 0; i < size; i++) {
      right[i] = storage[i] * before[i] + heat[i];
    }
    for (int i = 0; i < size; i++) {
      out[i] = right[row[i]];
    }
    for (int k = 0; k < size; k++) {
      subtract(out, out[k], column[k], k + 1, size);
    }
    for (int k = size - 1; k >= 0; k--) {
      out[k] /= column[k][k];
      subtract(out, out[k], column[k], 0, k);
    }
  }

  /**
   * Puts all temperatures to those of a {@link March#state}.
   *
   * @param state temperatures, °C
   */
  public void restore(double[] state) {
    System.arraycopy(state, 0, now, 0, now.length);
  }

  /**
   * Advances one step.
   *
   * @param d drivers with the flows and holds of the constructor
   */
  public void step(Drivers d) {
    Arrays.fill(heat, 0);
    network.drive(d, heat);
    solve(now, stage);
    for (int i = 0; i < now.length; i++) {
      from[i] = now[i] + (1 - GAMMA) / GAMMA * (stage[i] - now[i]);
    }
    solve(from, now);
  }

  /**
   * Air of a room, mean over the last step.
   *
   * @param room number of the room
   * @return °C
   */
  public double meanAir(int room) {
    return (1 - GAMMA) * stage[room] + GAMMA * now[room];
  }

  /**
   * All temperatures, as {@link March#state}.
   *
   * @return a copy, °C
   */
  public double[] state() {
    return now.clone();
  }
}
