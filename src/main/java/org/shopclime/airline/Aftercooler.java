package org.shopclime.airline;

/**
 * An air-cooled cooler between pump and tank: brings hot air near the air it is cooled with, and
 * drops there the water that would else fall in the tank.
 *
 * <p>Source: approach 5 to 20 °F, commonly 10 to 15: Compressed Air and Gas Institute and the
 * sourcebook of the US Department of Energy, from memory.
 *
 * @param approach how much warmer its air stays than the air around, K, 0 to 60
 * @param site where it stands: a cooler in a cool place makes drier air
 */
public record Aftercooler(double approach, LineSite site) implements LinePart {

  /** Usual approach, K: the middle of 10 to 15 °F. */
  public static final double USUAL_APPROACH = 12.5 / 1.8;

  /** Refuses what is outside the range above. */
  public Aftercooler {
    Check.within("approach of the aftercooler, K,", approach, 0, 60);
  }

  @Override
  public LineStep pass(LineAir in, LineFlow flow, LineSurroundings around) {
    double celsius = Math.min(in.celsius(), around.at(site) + approach);
    return LineStep.cooled(LineStep.Where.AFTERCOOLER, in, in.at(celsius), flow, site);
  }
}
