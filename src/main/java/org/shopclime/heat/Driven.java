package org.shopclime.heat;

/**
 * What can be driven through a day that repeats. Every call adds to those before; temperatures are
 * told from any one reference.
 *
 * <p>Heat into air and stars is told in each half hour by its mean and its tilt, the share of √3 (2
 * t - 1) with t from 0 to 1 through it. Nothing else has a tilt. Numbers out of range are refused
 * with an {@link IndexOutOfBoundsException}.
 */
public interface Driven {

  /**
   * A driven temperature.
   *
   * @param index number of the boundary
   * @param celsius through the day, °C
   * @param reference temperature it is to be told from, °C
   */
  void boundary(int index, Waves celsius, double reference);

  /**
   * Heat on the left face of a chain.
   *
   * @param chain number of the chain
   * @param watts through the day, W
   */
  void left(int chain, Waves watts);

  /**
   * Heat on the right face of a chain.
   *
   * @param chain number of the chain
   * @param watts through the day, W
   */
  void right(int chain, Waves watts);

  /**
   * Heat that is shared among faces.
   *
   * @param shares share of each end: the left one of chain k at 2 k, the right one at 2 k + 1
   * @param watts through the day, W
   */
  void faces(double[] shares, Waves watts);

  /**
   * Heat into the air of a room.
   *
   * @param room number of the room
   * @param mean through the day, W
   * @param tilt their tilts, W
   */
  void air(int room, Waves mean, Waves tilt);

  /**
   * Heat on the star of a room; where nothing radiates it goes into the air.
   *
   * @param room number of the room
   * @param mean through the day, W
   * @param tilt their tilts, W
   */
  void star(int room, Waves mean, Waves tilt);

  /**
   * Temperature of a held room, the same all day.
   *
   * @param room number of the room; one that floats takes no notice
   * @param celsius °C
   */
  void hold(int room, double celsius);
}
