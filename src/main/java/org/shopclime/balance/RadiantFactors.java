package org.shopclime.balance;

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

  private final Map<String, Double> factors = new HashMap<>();

  /**
   * Factors of one room.
   *
   * @param planes plane of each side towards the room
   * @param areas area of each, m²
   */
  RadiantFactors(List<String> planes, List<Double> areas) {
    Map<String, Double> area = new HashMap<>();
    for (int i = 0; i < planes.size(); i++) {
      area.merge(planes.get(i), areas.get(i), Double::sum);
    }
    area.keySet().forEach(plane -> factors.put(plane, 1.0));
    if (area.size() < 2) {
      return;
    }
    for (int round = 0; round < ROUNDS; round++) {
      double sum = 0;
      for (Map.Entry<String, Double> plane : area.entrySet()) {
        sum += plane.getValue() * factors.get(plane.getKey());
      }
      for (Map.Entry<String, Double> plane : area.entrySet()) {
        double factor = factors.get(plane.getKey());
        double blind = plane.getValue() * factor / sum;
        double next = blind < 1 - 1 / LARGEST ? 1 / (1 - blind) : LARGEST;
        factors.put(plane.getKey(), (factor + next) / 2);
      }
    }
  }

  /**
   * Factor of a plane.
   *
   * @param plane its name
   * @return 1 to 3
   */
  double of(String plane) {
    return factors.get(plane);
  }
}
