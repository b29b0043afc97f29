package org.shopclime.balance;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How well each plane of a room sees the rest of it, for exchange with one radiant node.
 *
 * <p>Source: J. A. Carroll, "An 'MRT method' of computing radiant energy exchange in rooms", 1980:
 * F = 1 / (1 - A F / sum(A F)). Pieces in one plane do not see each other, so areas are summed by
 * plane first. Where one plane is larger than all others together there is no such factor; it is
 * then held at {@value #LARGEST}, as large as two equal plates facing each other need (2) and half
 * as much again.
 */
final class RadiantFactors {

  private static final double LARGEST = 3;
  private static final int ROUNDS = 200;

  private final Map<String, Integer> numbers = new HashMap<>();
  private final double[] factors;

  /**
   * Factors of one room.
   *
   * @param planes plane of each side towards the room
   * @param areas area of each, m²
   */
  RadiantFactors(List<String> planes, List<Double> areas) {
    double[] area = new double[planes.size()];
    for (int i = 0; i < planes.size(); i++) {
      int plane = numbers.computeIfAbsent(planes.get(i), name -> numbers.size());
      area[plane] += areas.get(i);
    }
    factors = new double[numbers.size()];
    Arrays.fill(factors, 1);
    boolean changed = factors.length > 1;
    for (int round = 0; round < ROUNDS && changed; round++) {
      changed = nearer(area);
    }
  }

  /** One round; whether it still moved anything. */
  private boolean nearer(double[] area) {
    double sum = 0;
    for (int plane = 0; plane < factors.length; plane++) {
      sum += area[plane] * factors[plane];
    }
    boolean changed = false;
    for (int plane = 0; plane < factors.length; plane++) {
      double factor = factors[plane];
      double blind = area[plane] * factor / sum;
      double next = blind < 1 - 1 / LARGEST ? 1 / (1 - blind) : LARGEST;
      factors[plane] = (factor + next) / 2;
      changed |= factors[plane] != factor;
    }
    return changed;
  }

  /**
   * Factor of a plane.
   *
   * @param plane its name
   * @return 1 to 3
   */
  double of(String plane) {
    return factors[numbers.get(plane)];
  }
}
