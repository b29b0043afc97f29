package org.shopclime.unit;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.shopclime.quantity.Units;

/**
 * The sizes window units are sold in.
 *
 * <p>Common practice in the United States: 5,000, 6,000, 8,000, 10,000, 12,000, 15,000, 18,000,
 * 24,000, 28,000 and 36,000 BTU/h rated total capacity. Labels stray from these by a few hundred;
 * 14,000 and 14,500 are taken as the 15,000 class, 25,000 as the 24,000 class. From 15,000 up a
 * unit commonly needs 230 V.
 */
public final class StandardSizes {

  private static final double[] BTUH = {
    5000, 6000, 8000, 10000, 12000, 15000, 18000, 24000, 28000, 36000
  };

  private static final List<Double> WATTS =
      Arrays.stream(BTUH).map(Units::wattsFromBtuh).boxed().toList();

  private StandardSizes() {}

  /**
   * The sizes, rising.
   *
   * @return rated total capacity, W; unmodifiable
   */
  public static List<Double> watts() {
    return WATTS;
  }

  /**
   * The sizes as labels print them, rising.
   *
   * @return rated total capacity, BTU/h; a copy
   */
  public static double[] btuh() {
    return BTUH.clone();
  }

  /**
   * The smallest size that is at least so large, to the whole BTU/h.
   *
   * @param capacity wished rated total capacity, W, 0 or more
   * @return rated total capacity, W; empty if beyond the largest
   * @throws IllegalArgumentException if negative, infinite or NaN
   */
  public static OptionalDouble atLeast(double capacity) {
    if (!(capacity >= 0 && capacity < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("capacity " + capacity + " W is not 0 or more");
    }
    return Arrays.stream(BTUH)
        .filter(size -> size >= Math.rint(Units.btuh(capacity)))
        .map(Units::wattsFromBtuh)
        .findFirst();
  }
}
