package org.shopclime.shop;

/**
 * Size and position of a preset shell.
 *
 * @param length from front to back, m, 2 to 60
 * @param width width of the front, m, 2 to 60
 * @param height height of the walls, m, 1.8 to 10
 * @param facing compass direction the front with the big door looks to, degrees from north,
 *     clockwise, 0 to 360
 */
public record ShellSize(double length, double width, double height, double facing) {

  /** Checks the ranges. */
  public ShellSize {
    require("length", length, 2, 60);
    require("width", width, 2, 60);
    require("height", height, 1.8, 10);
    require("facing", facing, 0, 360);
  }

  private static void require(String what, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(what + " " + value + "; takes " + low + " to " + high);
    }
  }
}
