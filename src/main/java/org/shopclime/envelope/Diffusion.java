package org.shopclime.envelope;

import java.util.Arrays;
import java.util.List;

/**
 * Steady diffusion of vapour through a wall: temperature and vapour pressure at each plane, and
 * where water falls out.
 *
 * <p>Between planes with water the vapour pressure runs straight over the equivalent air thickness.
 * It may nowhere lie above saturation; where the straight line would, it becomes the tight string
 * under the saturation curve, which touches it at the planes where water falls out, be it one or
 * several. Where water from before lies, the pressure is that of saturation.
 *
 * <p>Source: ISO 13788:2012, 6.4 (H. Glaser 1958; tangents to the saturation curve). The string is
 * the lower convex hull, as more vapour must arrive at a wet plane than leaves it.
 *
 * <p>Limits: no air through the wall, no rain, no liquid drawn along, no water held by the
 * materials, figures of dry materials.
 */
public final class Diffusion {

  /** What lies no lower than this below a line lies on it, Pa. */
  private static final double CLOSE = 1e-9;

  private final SlicedWall wall;
  private final double[] temperature;
  private final double[] saturation;
  private final double[] pressure;
  private final boolean[] touches;
  private final boolean outerDew;
  private final boolean innerDew;

  private Diffusion(SlicedWall wall, WallClimate climate) {
    this.wall = wall;
    List<SlicedWall.Plane> planes = wall.planes();
    int count = planes.size();
    temperature = new double[count];
    saturation = new double[count];
    pressure = new double[count];
    touches = new boolean[count];
    double all = wall.innerFace().resistance();
    for (int i = 0; i < count; i++) {
      double share = all > 0 ? planes.get(i).resistance() / all : (double) i / (count - 1);
      temperature[i] = climate.outerFace() + (climate.innerFace() - climate.outerFace()) * share;
      saturation[i] = Vapour.saturation(temperature[i]);
    }
    outerDew = climate.outerPressure() > saturation[0];
    innerDew = climate.innerPressure() > saturation[count - 1];
    pressure[0] = Math.min(climate.outerPressure(), saturation[0]);
    pressure[count - 1] = Math.min(climate.innerPressure(), saturation[count - 1]);
  }

  /**
   * Diffusion through a dry wall.
   *
   * @param wall the wall
   * @param climate what stands on both sides
   * @return its state
   */
  public static Diffusion of(SlicedWall wall, WallClimate climate) {
    return of(wall, climate, new double[wall.planes().size()]);
  }

  /**
   * Diffusion through a wall in which water lies.
   *
   * @param wall the wall
   * @param climate what stands on both sides
   * @param water water at each plane, kg/m²; not kept
   * @return its state
   * @throws IllegalArgumentException if {@code water} has not one figure for each plane
   */
  static Diffusion of(SlicedWall wall, WallClimate climate, double[] water) {
    if (water.length != wall.planes().size()) {
      throw new IllegalArgumentException(
          water.length + " figures of water; takes " + wall.planes().size());
    }
    Diffusion diffusion = new Diffusion(wall, climate);
    int last = water.length - 1;
    int from = 0;
    for (int i = 1; i <= last; i++) {
      boolean wet = i < last && water[i] > 0;
      if (wet) {
        diffusion.pressure[i] = diffusion.saturation[i];
        diffusion.touches[i] = true;
      }
      if (wet || i == last) {
        diffusion.string(from, i);
        from = i;
      }
    }
    return diffusion;
  }

  /** The tight string from one plane of known pressure to another. */
  private void string(int from, int to) {
    int[] hull = new int[to - from + 1];
    int size = 0;
    for (int i = from; i <= to; i++) {
      while (size >= 2 && isAbove(hull[size - 2], hull[size - 1], i, from, to)) {
        size--;
      }
      hull[size++] = i;
    }
    for (int k = 1; k < size; k++) {
      int left = hull[k - 1];
      int right = hull[k];
      if (k < size - 1) {
        touches[right] = true;
      }
      double slope = (bound(right, from, to) - bound(left, from, to)) / (air(right) - air(left));
      for (int i = left + 1; i < right; i++) {
        pressure[i] = bound(left, from, to) + slope * (air(i) - air(left));
      }
      if (right < to) {
        pressure[right] = saturation[right];
      }
    }
  }

  /** Whether the middle one of three planes lies on or above the line of the others. */
  private boolean isAbove(int left, int middle, int right, int from, int to) {
    double first = bound(left, from, to);
    double slope = (bound(right, from, to) - first) / (air(right) - air(left));
    return bound(middle, from, to) >= first + slope * (air(middle) - air(left)) - CLOSE;
  }

  /** What the string is held under: known pressure at its ends, else saturation. */
  private double bound(int plane, int from, int to) {
    return plane == from || plane == to ? pressure[plane] : saturation[plane];
  }

  private double air(int plane) {
    return wall.planes().get(plane).airThickness();
  }

  /**
   * The wall.
   *
   * @return layers and planes
   */
  public SlicedWall wall() {
    return wall;
  }

  /**
   * Temperature at a plane.
   *
   * @param plane 0 (outer face) to the last (inner face)
   * @return °C
   */
  public double temperature(int plane) {
    return temperature[plane];
  }

  /**
   * Vapour pressure at a plane.
   *
   * @param plane 0 (outer face) to the last (inner face)
   * @return Pa, at most that of saturation
   */
  public double pressure(int plane) {
    return pressure[plane];
  }

  /**
   * Vapour pressure of saturation at a plane.
   *
   * @param plane 0 (outer face) to the last (inner face)
   * @return Pa
   */
  public double saturation(int plane) {
    return saturation[plane];
  }

  /**
   * Relative humidity at a plane.
   *
   * @param plane 0 (outer face) to the last (inner face)
   * @return 0 to 1
   */
  public double humidity(int plane) {
    return pressure[plane] / saturation[plane];
  }

  /**
   * Dew point at a plane.
   *
   * @param plane 0 (outer face) to the last (inner face)
   * @return °C, at most the temperature there
   */
  public double dewPoint(int plane) {
    return touches[plane] ? temperature[plane] : Vapour.dewPoint(Math.max(0.001, pressure[plane]));
  }

  /**
   * Vapour that passes from a plane to the next one outwards.
   *
   * @param plane 1 to the last
   * @return kg/(s·m²); above 0 outwards
   */
  public double flow(int plane) {
    return Vapour.AIR * (pressure[plane] - pressure[plane - 1]) / (air(plane) - air(plane - 1));
  }

  /**
   * Water that falls out at a plane.
   *
   * @param plane 0 to the last; nothing is told of the faces
   * @return kg/(s·m²); below 0 where water from before dries; 0 at planes without water
   */
  public double rate(int plane) {
    boolean within = plane > 0 && plane < pressure.length - 1;
    return within && touches[plane] ? flow(plane + 1) - flow(plane) : 0;
  }

  /**
   * Whether dew falls on the outer face.
   *
   * @return true if it is colder than the dew point of the air before it
   */
  public boolean dewOutside() {
    return outerDew;
  }

  /**
   * Whether dew falls on the inner face.
   *
   * @return true if it is colder than the dew point of the air before it
   */
  public boolean dewInside() {
    return innerDew;
  }

  /**
   * Planes at which water falls out of a wall that was dry.
   *
   * @return how many
   */
  public int wetPlanes() {
    int wet = 0;
    for (int plane = 1; plane < touches.length - 1; plane++) {
      wet += touches[plane] ? 1 : 0;
    }
    return wet;
  }

  @Override
  public String toString() {
    return "Diffusion[temperature="
        + Arrays.toString(temperature)
        + ", pressure="
        + Arrays.toString(pressure)
        + "]";
  }
}
