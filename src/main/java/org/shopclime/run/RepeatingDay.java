package org.shopclime.run;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.function.DoublePredicate;
import org.shopclime.balance.DayKind;

/**
 * Finds the day that ends as it began, temperatures and humidity, in far fewer days than it takes
 * by waiting: what each day changed is used to guess the state at which nothing would change (D. G.
 * Anderson, Iterative procedures for nonlinear integral equations, J. ACM 12 (1965) 547).
 *
 * <p>Error: ends when a day moves no node by {@value #CLOSE} K and no humidity by as much in terms
 * of heat. What is left after that is below 0.01 °F ({@code LivedDayTest}).
 */
final class RepeatingDay {

  /** Largest change of any temperature in a day that repeats, K. */
  static final double CLOSE = 5e-4;

  /** K by which moisture weighs, for each kg/kg: heat of evaporation over specific heat. */
  private static final double WEIGHT = 2500;

  /**
   * Day that repeats and a day that moved things by so much differ by less than this times it; with
   * the guesses it is about once.
   */
  static final double SAFELY = 20;

  private static final int REMEMBERED = 5;
  private static final int GUESSED_DAYS = 40;
  private static final int MOST_DAYS = 150;

  /** A guess further off than this is none, K. */
  private static final double WILD = 40;

  private final DayRunner runner;
  private final DayKind kind;
  private final double[] weights;
  private final Deque<double[]> stateSteps = new ArrayDeque<>();
  private final Deque<double[]> changeSteps = new ArrayDeque<>();
  private double[] stateBefore;
  private double[] changeBefore;

  private RepeatingDay(DayRunner runner, DayKind kind) {
    this.runner = runner;
    weights = runner.weights();
    this.kind = kind;
  }

  /**
   * Runs days until they repeat; the runner then stands at the end of the last of them.
   *
   * @param runner runner at any state
   * @param kind kind of day
   * @return number of days run
   */
  static int find(DayRunner runner, DayKind kind) {
    return new RepeatingDay(runner, kind).find(change -> false);
  }

  /**
   * The same, given up sooner where the exact day no longer matters.
   *
   * @param runner runner at any state
   * @param kind kind of day
   * @param clear whether a day that moved things by so much, K, is clear enough
   * @return number of days run
   */
  static int find(DayRunner runner, DayKind kind, DoublePredicate clear) {
    return new RepeatingDay(runner, kind).find(clear);
  }

  private int find(DoublePredicate clear) {
    for (int day = 1; day <= MOST_DAYS; day++) {
      double[] start = vector(runner.state());
      runner.run(kind);
      double[] change = minus(vector(runner.state()), start);
      double moved = largest(change);
      if (moved < CLOSE || clear.test(moved)) {
        return day;
      }
      if (day < GUESSED_DAYS) {
        guess(start, change);
      }
    }
    return MOST_DAYS;
  }

  private void guess(double[] start, double[] change) {
    if (stateBefore != null) {
      stateSteps.addLast(minus(start, stateBefore));
      changeSteps.addLast(minus(change, changeBefore));
      if (stateSteps.size() > REMEMBERED) {
        stateSteps.removeFirst();
        changeSteps.removeFirst();
      }
      double[] guess = start.clone();
      double[] far = change.clone();
      List<double[]> moved = new ArrayList<>(stateSteps);
      List<double[]> changed = new ArrayList<>(changeSteps);
      double[] shares = shares(changed, change);
      for (int i = 0; i < shares.length; i++) {
        for (int n = 0; n < far.length; n++) {
          far[n] -= shares[i] * (moved.get(i)[n] + changed.get(i)[n]);
        }
      }
      for (int n = 0; n < guess.length; n++) {
        guess[n] += far[n];
      }
      if (largest(far) < WILD && largest(guess) < runner.hottest()) {
        runner.guess(state(guess));
      }
    }
    stateBefore = start;
    changeBefore = change;
  }

  /** Shares of the remembered steps that together come nearest to undoing the change. */
  private static double[] shares(List<double[]> steps, double[] change) {
    int size = steps.size();
    double[][] rows = new double[size][size + 1];
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        rows[i][j] = product(steps.get(i), steps.get(j));
      }
      rows[i][size] = product(steps.get(i), change);
    }
    double[] scale = new double[size];
    for (int i = 0; i < size; i++) {
      scale[i] = Math.sqrt(rows[i][i]) + 1e-300;
    }
    for (int i = 0; i < size; i++) {
      for (int j = 0; j < size; j++) {
        rows[i][j] /= scale[i] * scale[j];
      }
      rows[i][i] += 1e-11;
      rows[i][size] /= scale[i];
    }
    for (int k = 0; k < size; k++) {
      for (int i = k + 1; i < size; i++) {
        double share = rows[i][k] / rows[k][k];
        for (int j = k; j <= size; j++) {
          rows[i][j] -= share * rows[k][j];
        }
      }
    }
    double[] shares = new double[size];
    for (int k = size - 1; k >= 0; k--) {
      double sum = rows[k][size];
      for (int j = k + 1; j < size; j++) {
        sum -= rows[k][j] * shares[j];
      }
      shares[k] = sum / rows[k][k];
    }
    for (int k = 0; k < size; k++) {
      shares[k] /= scale[k];
    }
    return shares;
  }

  /** A state in K. */
  private double[] vector(DayRunner.State state) {
    int heat = weights.length;
    double[] vector = Arrays.copyOf(state.heat(), heat + state.water().length);
    for (int i = 0; i < heat; i++) {
      vector[i] *= weights[i];
    }
    for (int i = 0; i < state.water().length; i++) {
      vector[heat + i] = WEIGHT * state.water()[i];
    }
    return vector;
  }

  private DayRunner.State state(double[] vector) {
    double[] heat = Arrays.copyOf(vector, weights.length);
    for (int i = 0; i < heat.length; i++) {
      heat[i] /= weights[i];
    }
    double[] water = new double[vector.length - heat.length];
    for (int i = 0; i < water.length; i++) {
      water[i] = vector[heat.length + i] / WEIGHT;
    }
    return new DayRunner.State(heat, water);
  }

  private static double[] minus(double[] one, double[] other) {
    double[] difference = new double[one.length];
    for (int i = 0; i < one.length; i++) {
      difference[i] = one[i] - other[i];
    }
    return difference;
  }

  private static double product(double[] one, double[] other) {
    double sum = 0;
    for (int i = 0; i < one.length; i++) {
      sum += one[i] * other[i];
    }
    return sum;
  }

  private static double largest(double[] values) {
    double largest = 0;
    for (double value : values) {
      largest = Math.max(largest, Math.abs(value));
    }
    return largest;
  }
}
