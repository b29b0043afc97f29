package org.shopclime.envelope;

import java.util.ArrayList;
import java.util.List;

/**
 * The layers of one path through a wall, cut at planes where temperature and vapour pressure are
 * looked at: plane 0 is the outer face, the last one the inner face. Layers of much resistance are
 * cut inside as well.
 *
 * <p>Source: ISO 13788:2012, 6.3: no part resists more than 0.25 m²·K/W.
 */
public final class SlicedWall {

  /** Most resistance of one part, m²·K/W. */
  private static final double MOST = 0.25;

  /** Least equivalent air thickness of a part, m, so that no two planes fall together. */
  private static final double LEAST = 1e-6;

  private final List<Layer> layers;
  private final List<Plane> planes;

  /**
   * A plane.
   *
   * @param depth distance from the outer face, m
   * @param resistance thermal resistance from the outer face, m²·K/W
   * @param airThickness equivalent air thickness from the outer face, m
   * @param outer number of the layer on its outer side; -1 at the outer face
   * @param inner number of the layer on its inner side; that of {@code outer} inside a layer; the
   *     number of layers at the inner face
   */
  public record Plane(double depth, double resistance, double airThickness, int outer, int inner) {

    /**
     * Whether it lies within one layer.
     *
     * @return false at faces and between layers
     */
    public boolean isInside() {
      return outer == inner;
    }
  }

  private SlicedWall(List<Layer> layers, List<Plane> planes) {
    this.layers = List.copyOf(layers);
    this.planes = List.copyOf(planes);
  }

  /**
   * Cuts layers.
   *
   * @param layers outside to inside, at least one; each must tell how it resists vapour
   * @return the wall
   * @throws IllegalArgumentException if a layer does not tell how it resists vapour, or there is
   *     none
   */
  public static SlicedWall of(List<Layer> layers) {
    if (layers.isEmpty()) {
      throw new IllegalArgumentException("a wall has no layers; takes at least one");
    }
    List<Plane> planes = new ArrayList<>(List.of(new Plane(0, 0, 0, -1, 0)));
    double depth = 0;
    double resistance = 0;
    double air = 0;
    for (int i = 0; i < layers.size(); i++) {
      Layer layer = layers.get(i);
      double thickness =
          layer
              .vapour()
              .orElseThrow(
                  () ->
                      new IllegalArgumentException(
                          "nothing tells how " + layer.name() + " resists vapour"));
      int parts = (int) Math.max(1, Math.ceil(layer.resistance() / MOST - 1e-9));
      for (int part = 1; part <= parts; part++) {
        depth += layer.thickness() / parts;
        resistance += layer.resistance() / parts;
        air += Math.max(LEAST, thickness / parts);
        planes.add(new Plane(depth, resistance, air, i, part == parts ? i + 1 : i));
      }
    }
    return new SlicedWall(layers, planes);
  }

  /**
   * The layers.
   *
   * @return outside to inside
   */
  public List<Layer> layers() {
    return layers;
  }

  /**
   * The planes.
   *
   * @return from the outer face to the inner one
   */
  public List<Plane> planes() {
    return planes;
  }

  /**
   * The last plane.
   *
   * @return the inner face; its figures are those of the whole wall
   */
  public Plane innerFace() {
    return planes.get(planes.size() - 1);
  }
}
