package org.shopclime.balance;

import java.util.Arrays;

/**
 * Mean temperatures of all faces and radiant nodes, at which radiation is made linear: 4 σ T³ at
 * the mean of the two ends.
 *
 * <p>Error: a tangent tells too little given off far from the mean. A black roof without mass, 70
 * °C at noon about a mean of 41 °C, reads 1.1 K too hot, the air of a ventilated attic below it 0.2
 * K, of a sealed one 1.0 K, the heat through a ceiling of R-30 below the sealed attic 2 % too much
 * ({@code HotAtticTest}).
 */
final class Linearisation {

  private final double[] left;
  private final double[] right;
  private final double[] star;

  /**
   * One temperature everywhere.
   *
   * @param chains number of chains
   * @param rooms number of rooms
   * @param celsius temperature, °C
   */
  Linearisation(int chains, int rooms, double celsius) {
    left = new double[chains];
    right = new double[chains];
    star = new double[rooms];
    Arrays.fill(left, celsius);
    Arrays.fill(right, celsius);
    Arrays.fill(star, celsius);
  }

  double left(int chain) {
    return left[chain];
  }

  double right(int chain) {
    return right[chain];
  }

  double star(int room) {
    return star[room];
  }

  void left(int chain, double celsius) {
    left[chain] = celsius;
  }

  void right(int chain, double celsius) {
    right[chain] = celsius;
  }

  void star(int room, double celsius) {
    star[room] = celsius;
  }
}
