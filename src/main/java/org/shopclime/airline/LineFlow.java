package org.shopclime.airline;

/**
 * Air through the line.
 *
 * @param mean dry air in the mean of the hour, kg/s, 0 to 10: water is counted by it
 * @param drawing dry air while a tool draws, kg/s, 0 to 10: what passes a pipe or a dryer at once
 */
public record LineFlow(double mean, double drawing) {

  /** Refuses what is outside the ranges above. */
  public LineFlow {
    Check.within("mean air in the line, kg/s,", mean, 0, 10);
    Check.within("air while drawing, kg/s,", drawing, 0, 10);
  }

  /** What is left of both when a part of it is let go. */
  LineFlow less(double share) {
    return new LineFlow(mean * (1 - share), drawing * (1 - share));
  }
}
