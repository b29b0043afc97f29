package org.shopclime.envelope;

import java.util.List;

/**
 * One way of heat through an assembly: straight through these layers.
 *
 * @param fraction share of the assembly's area, above 0 to 1
 * @param layers outside to inside, at least one
 */
public record Path(double fraction, List<Layer> layers) {

  /** Copies the list; refuses a share outside its range and an empty list. */
  public Path {
    Range.requireAbove("share of a path", fraction, 0, 1);
    layers = List.copyOf(layers);
    if (layers.isEmpty()) {
      throw new IllegalArgumentException("a path has no layers; takes at least one");
    }
  }

  /**
   * Resistance from face to face, films not counted.
   *
   * @return m²·K/W
   */
  public double resistance() {
    return layers.stream().mapToDouble(Layer::resistance).sum();
  }

  /**
   * Heat stored for one kelvin, per m² of this path.
   *
   * @return J/(m²·K)
   */
  public double heatCapacity() {
    return layers.stream().mapToDouble(Layer::heatCapacity).sum();
  }
}
