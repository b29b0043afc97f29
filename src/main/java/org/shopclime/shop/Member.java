package org.shopclime.shop;

/** Framing lumber by trade name, with its real depth and width. */
public enum Member {
  /** 1.5 x 3.5 in. */
  TWO_BY_FOUR(0.0381, 0.0889),
  /** 1.5 x 5.5 in. */
  TWO_BY_SIX(0.0381, 0.1397),
  /** 1.5 x 7.25 in. */
  TWO_BY_EIGHT(0.0381, 0.18415),
  /** 1.5 x 9.25 in. */
  TWO_BY_TEN(0.0381, 0.23495);

  private final double width;
  private final double depth;

  Member(double width, double depth) {
    this.width = width;
    this.depth = depth;
  }

  /**
   * Width across the wall's length.
   *
   * @return m
   */
  public double width() {
    return width;
  }

  /**
   * Depth through the wall.
   *
   * @return m
   */
  public double depth() {
    return depth;
  }
}
