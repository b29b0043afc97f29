package org.shopclime.load;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Steady heat between named points by Kirchhoff's rule, solved by sweeping: the hand calculation
 * behind tests of shops with several unknown temperatures.
 */
final class Circuit {

  private final Map<String, Map<String, Double>> ties = new LinkedHashMap<>();
  private final Map<String, Double> known = new HashMap<>();
  private final Map<String, Double> sources = new HashMap<>();
  private Map<String, Double> solved = Map.of();

  /** Ties two points, W/K. */
  Circuit tie(String one, String other, double conductance) {
    ties.computeIfAbsent(one, key -> new LinkedHashMap<>()).merge(other, conductance, Double::sum);
    ties.computeIfAbsent(other, key -> new LinkedHashMap<>()).merge(one, conductance, Double::sum);
    return this;
  }

  /** Holds a point, °C. */
  Circuit hold(String point, double celsius) {
    known.put(point, celsius);
    return this;
  }

  /** Heat into a point, W. */
  Circuit source(String point, double watts) {
    sources.merge(point, watts, Double::sum);
    return this;
  }

  /** Sweeps until nothing moves. */
  Circuit solve() {
    Map<String, Double> now = new HashMap<>();
    ties.keySet().forEach(point -> now.put(point, known.getOrDefault(point, 30.0)));
    double moved = 1;
    for (int sweep = 0; sweep < 200_000 && moved > 1e-12; sweep++) {
      moved = 0;
      for (String point : ties.keySet()) {
        if (!known.containsKey(point)) {
          double heat = sources.getOrDefault(point, 0.0);
          double sum = 0;
          for (Map.Entry<String, Double> tie : ties.get(point).entrySet()) {
            heat += tie.getValue() * now.get(tie.getKey());
            sum += tie.getValue();
          }
          moved = Math.max(moved, Math.abs(heat / sum - now.get(point)));
          now.put(point, heat / sum);
        }
      }
    }
    solved = now;
    return this;
  }

  /** Temperature of a point, °C. */
  double at(String point) {
    return solved.get(point);
  }

  /** Heat that reaches a held point from all its ties, W. */
  double into(String point) {
    return ties.get(point).entrySet().stream()
        .mapToDouble(tie -> tie.getValue() * (solved.get(tie.getKey()) - solved.get(point)))
        .sum();
  }
}
