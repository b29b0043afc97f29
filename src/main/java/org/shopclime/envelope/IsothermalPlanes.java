package org.shopclime.envelope;

import java.util.List;

/**
 * The other bound on a framed assembly: heat crosses freely along every boundary between layers.
 *
 * <p>The paths must be cut at the same planes: as many layers each, the first of all paths lying
 * side by side, and so on.
 */
public final class IsothermalPlanes {

  private IsothermalPlanes() {}

  /**
   * Resistance from air to air if each plane between layers has one temperature.
   *
   * <p>Source: ASHRAE Handbook - Fundamentals, isothermal-planes method; ISO 6946:2017, 6.7.2.4
   * (lower limit). Error: reads low; {@link Assembly#uFactor} bounds it from the other side.
   *
   * @param assembly paths of equally many layers
   * @param outsideFilmR resistance of the outside film, m²·K/W, 0 to 10
   * @param insideFilmR resistance of the inside film, m²·K/W, 0 to 10
   * @return m²·K/W
   * @throws IllegalArgumentException if the paths have different numbers of layers, a layer resists
   *     nothing in one path but not in another, or a film is outside its range
   */
  public static double resistance(Assembly assembly, double outsideFilmR, double insideFilmR) {
    double sum =
        Range.require("outside film, m²·K/W,", outsideFilmR, 0, 10)
            + Range.require("inside film, m²·K/W,", insideFilmR, 0, 10);
    List<Path> paths = assembly.paths();
    int planes = paths.get(0).layers().size();
    for (Path path : paths) {
      if (path.layers().size() != planes) {
        throw new IllegalArgumentException(
            "paths have "
                + planes
                + " and "
                + path.layers().size()
                + " layers; takes equally many");
      }
    }
    for (int i = 0; i < planes; i++) {
      sum += planeResistance(paths, i);
    }
    return sum;
  }

  private static double planeResistance(List<Path> paths, int index) {
    if (paths.stream().allMatch(path -> path.layers().get(index).resistance() == 0)) {
      return 0;
    }
    double conductance = 0;
    for (Path path : paths) {
      Layer layer = path.layers().get(index);
      conductance +=
          path.fraction()
              / Range.requireAbove("resistance of " + layer.name(), layer.resistance(), 0, 100);
    }
    return 1 / conductance;
  }

  /**
   * Resistance from air to air by the combined method: mean of the upper limit (parallel paths) and
   * the lower limit (isothermal planes).
   *
   * <p>Source: ISO 6946:2017, 6.7.2.2. Limits: metal bridging the insulation is outside its scope.
   *
   * @param assembly paths of equally many layers
   * @param outsideFilmR resistance of the outside film, m²·K/W, 0 to 10
   * @param insideFilmR resistance of the inside film, m²·K/W, 0 to 10
   * @return m²·K/W
   * @throws IllegalArgumentException as {@link #resistance}
   */
  public static double combinedResistance(
      Assembly assembly, double outsideFilmR, double insideFilmR) {
    double upper = 1 / assembly.uFactor(outsideFilmR, insideFilmR);
    double lower = resistance(assembly, outsideFilmR, insideFilmR);
    return (upper + lower) / 2;
  }
}
