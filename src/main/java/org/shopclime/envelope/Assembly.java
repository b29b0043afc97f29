package org.shopclime.envelope;

import java.util.List;

/**
 * A wall, roof, floor or door as parallel ways of heat, each with its own share of the area.
 *
 * @param paths at least one; their shares make 1
 */
public record Assembly(List<Path> paths) {

  private static final double SHARES_CLOSE = 1e-9;

  /** Copies the list; refuses shares that do not make 1. */
  public Assembly {
    paths = List.copyOf(paths);
    double sum = paths.stream().mapToDouble(Path::fraction).sum();
    if (!(Math.abs(sum - 1) <= SHARES_CLOSE)) {
      throw new IllegalArgumentException("shares of the paths make " + sum + "; must make 1");
    }
  }

  /**
   * The same layers over the whole area.
   *
   * @param layers outside to inside, at least one
   * @return an assembly of one path
   */
  public static Assembly of(List<Layer> layers) {
    return new Assembly(List.of(new Path(1, layers)));
  }

  /**
   * Thermal transmittance with all paths side by side and no heat crossing between them.
   *
   * <p>Source: ASHRAE Handbook - Fundamentals, parallel-path method. Error: reads a few per cent
   * low where a good conductor lies in or across the framing; see {@link IsothermalPlanes}.
   *
   * @param outsideFilmR resistance of the outside film, m²·K/W, 0 to 10
   * @param insideFilmR resistance of the inside film, m²·K/W, 0 to 10
   * @return W/(m²·K)
   * @throws IllegalArgumentException if a film is outside its range, or a path and both films
   *     resist nothing
   */
  public double uFactor(double outsideFilmR, double insideFilmR) {
    double films =
        Range.require("outside film, m²·K/W,", outsideFilmR, 0, 10)
            + Range.require("inside film, m²·K/W,", insideFilmR, 0, 10);
    double sum = 0;
    for (Path path : paths) {
      double resistance =
          Range.requireAbove("resistance of a path", films + path.resistance(), 0, 1e4);
      sum += path.fraction() / resistance;
    }
    return sum;
  }

  /**
   * Heat stored for one kelvin, per m² of the whole.
   *
   * @return J/(m²·K)
   */
  public double heatCapacity() {
    return paths.stream().mapToDouble(path -> path.fraction() * path.heatCapacity()).sum();
  }
}
