package org.shopclime.climate;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * In which order the days of a month follow each other, and how the days of one type stand to each
 * other.
 *
 * <p>The order goes up and down as weather does: its autocorrelation from one day to the twelfth is
 * that of the daily mean temperature within months, averaged over 60 of the stations (0.61, 0.27,
 * 0.11, 0.02 and then slightly below nothing), found by simulated annealing over all orders of 31
 * days; a shorter month takes its beginning.
 *
 * <p>Days of one type spread as the normal distribution does (Blom's scores). Sun and wind take the
 * same scores in orders of their own, so that neither goes with temperature or with the other.
 */
final class DayOrder {

  /** Ranks of 31 days, 0 the coldest, as they follow each other. */
  private static final int[] RANKS = {
    21, 24, 11, 16, 9, 15, 12, 23, 28, 29, 20, 6, 2, 4, 5, 0, 1, 14, 7, 10, 22, 13, 3, 8, 25, 27,
    30, 17, 18, 26, 19
  };

  private static final int FEWEST = 5;

  /** For types of 5, 6 and 7 days: rank in sunshine of the day of each rank in warmth. */
  private static final int[][] SUN = {{0, 4, 3, 2, 1}, {2, 5, 1, 0, 4, 3}, {2, 6, 3, 0, 4, 1, 5}};

  private static final int[][] WIND = {{2, 1, 4, 0, 3}, {4, 3, 1, 2, 0, 5}, {3, 1, 6, 4, 2, 0, 5}};

  private DayOrder() {}

  /** Ranks of the days of a month, 0 for the coldest, day by day. */
  static int[] ranks(int days) {
    return IntStream.range(0, days)
        .map(day -> (int) Arrays.stream(RANKS, 0, days).filter(other -> other < RANKS[day]).count())
        .toArray();
  }

  /** Rank in sunshine of the day of a rank in warmth, both from 0, among the days of its type. */
  static int sun(int rank, int days) {
    return SUN[days - FEWEST][rank];
  }

  /** Rank in wind of the day of a rank in warmth, both from 0, among the days of its type. */
  static int wind(int rank, int days) {
    return WIND[days - FEWEST][rank];
  }

  /**
   * Normal scores of some days, rising, their mean 0 and their spread 1.
   *
   * <p>Source: G. Blom (1958), (i - 3/8)/(n + 1/4); inverse of the error function after S. Winitzki
   * (2008), within 0.2 %, which the scaling to spread 1 makes good.
   */
  static double[] scores(int days) {
    double[] scores = new double[days];
    double square = 0;
    for (int i = 0; i < days; i++) {
      scores[i] = inverseErf(2 * (i + 0.625) / (days + 0.25) - 1);
      square += scores[i] * scores[i] / days;
    }
    double spread = Math.sqrt(square);
    return Arrays.stream(scores).map(score -> score / spread).toArray();
  }

  private static double inverseErf(double x) {
    double logarithm = Math.log(1 - x * x);
    double a = 2 / (Math.PI * 0.147) + logarithm / 2;
    return Math.signum(x) * Math.sqrt(Math.sqrt(a * a - logarithm / 0.147) - a);
  }
}
