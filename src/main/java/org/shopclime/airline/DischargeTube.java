package org.shopclime.airline;

/**
 * The finned tube from pump to tank.
 *
 * <p>Source: common practice: it takes about half of the difference between hot air and its place.
 *
 * @param effectiveness part of that difference it takes, 0 to 1
 */
public record DischargeTube(double effectiveness) implements LinePart {

  /** The usual one. */
  public static final DischargeTube USUAL = new DischargeTube(0.5);

  /** Refuses what is outside the range above. */
  public DischargeTube {
    Check.within("effectiveness of the tube", effectiveness, 0, 1);
  }

  @Override
  public LineStep pass(LineAir in, LineFlow flow, LineSurroundings around) {
    double celsius = in.celsius() - effectiveness * (in.celsius() - around.place());
    return LineStep.cooled(LineStep.Where.TUBE, in, in.at(celsius), flow, LineSite.PLACE);
  }
}
