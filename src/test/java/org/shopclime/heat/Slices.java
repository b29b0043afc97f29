package org.shopclime.heat;

import java.util.ArrayList;
import java.util.List;

/**
 * One square metre of a wall of layers, left to right, cut into slices: each slice is a node in its
 * middle with half its resistance to either side. Resistances without mass lie between.
 */
final class Slices {

  private final List<Double> capacities = new ArrayList<>();
  private final List<Double> resistances = new ArrayList<>();

  /** Resistance gathered since the last node, m2K/W. */
  private double open;

  /** A layer without mass, m2K/W. */
  Slices resistance(double value) {
    open += value;
    return this;
  }

  /** A layer with mass: m, W/mK, kg/m3, J/kgK, and into how many slices. */
  Slices layer(double thickness, double conductivity, double density, double heat, int slices) {
    for (int i = 0; i < slices; i++) {
      open += thickness / slices / conductivity / 2;
      resistances.add(open);
      capacities.add(thickness / slices * density * heat);
      open = thickness / slices / conductivity / 2;
    }
    return this;
  }

  /** From the left boundary to the first node, W/m2K. */
  double left() {
    return 1 / resistances.get(0);
  }

  /** From the last node to the right boundary, W/m2K. */
  double right() {
    return 1 / open;
  }

  double uFactor() {
    return 1 / (open + resistances.stream().mapToDouble(r -> r).sum());
  }

  int nodes() {
    return capacities.size();
  }

  /** Adds the wall between two boundaries. */
  int between(Network.Builder builder, int left, int right) {
    return add(builder, new End.Boundary(left, left()), new End.Boundary(right, right()));
  }

  /** Adds the wall with a boundary at the left and nothing behind it. */
  int behind(Network.Builder builder, int left) {
    return add(builder, new End.Boundary(left, left()), new End.Insulated());
  }

  private int add(Network.Builder builder, End left, End right) {
    double[] conductances = new double[capacities.size() - 1];
    for (int i = 0; i < conductances.length; i++) {
      conductances[i] = 1 / resistances.get(i + 1);
    }
    double[] stores = capacities.stream().mapToDouble(c -> c).toArray();
    return builder.chain(left, stores, conductances, right);
  }
}
