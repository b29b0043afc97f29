package org.shopclime.run;

import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Humidity of rooms that share air in one step: each takes in the mean of the others'. Found at
 * once, as each mean is a straight line of the others; where water falls out of the air it is not,
 * and rounds follow until the books close.
 */
final class SharedWater {

  /** How near the means must be found, kg/kg, so near that the books close; and rounds for it. */
  private static final double NEAR = 1e-15;

  private static final int MOST_ROUNDS = 200;

  /** By how much a mean is moved to see what that does, kg/kg. */
  private static final double MOVED = 1e-3;

  private SharedWater() {}

  /**
   * Finds the means.
   *
   * @param means humidity ratio of each room, mean over the step, kg/kg: a guess, set to what is
   *     found
   * @param mean what the mean of a room becomes with those of the others as they stand, kg/kg
   */
  static void find(double[] means, IntToDoubleFunction mean) {
    guess(means, mean);
    settle(IntStream.range(0, means.length).toArray(), means, mean);
  }

  /**
   * The same from a guess that is near, in rounds alone.
   *
   * @param rooms those that share air
   * @param means as there
   * @param mean as there
   */
  static void settle(int[] rooms, double[] means, IntToDoubleFunction mean) {
    boolean found = false;
    for (int round = 0; round < MOST_ROUNDS && !found; round++) {
      found = true;
      for (int room : rooms) {
        double next = mean.applyAsDouble(room);
        found &= Math.abs(next - means[room]) < NEAR;
        means[room] = next;
      }
    }
  }

  private static void guess(double[] means, IntToDoubleFunction mean) {
    int size = means.length;
    double[][] rows = new double[size][size + 1];
    double[] still = new double[size];
    for (int i = 0; i < size; i++) {
      still[i] = mean.applyAsDouble(i);
      rows[i][i] = 1;
      rows[i][size] = still[i] - means[i];
    }
    for (int j = 0; j < size; j++) {
      double before = means[j];
      means[j] += MOVED;
      for (int i = 0; i < size; i++) {
        if (i != j) {
          rows[i][j] = -(mean.applyAsDouble(i) - still[i]) / MOVED;
        }
      }
      means[j] = before;
    }
    // Rows lead by their diagonals: no room takes in more of the others than all its air.
    for (int k = 0; k < size; k++) {
      for (int i = k + 1; i < size; i++) {
        double share = rows[i][k] / rows[k][k];
        for (int j = k; j <= size; j++) {
          rows[i][j] -= share * rows[k][j];
        }
      }
    }
    for (int k = size - 1; k >= 0; k--) {
      for (int j = k + 1; j < size; j++) {
        rows[k][size] -= rows[k][j] * rows[j][size];
      }
      rows[k][size] /= rows[k][k];
      means[k] = Math.max(0, means[k] + rows[k][size]);
    }
  }
}
