package org.shopclime.airline;

/**
 * The coldest stretch of the line, long enough for its air to become as cold: the unkind case, in
 * which all that can drop out does, before the tool.
 */
public record ColdStretch() implements LinePart {

  @Override
  public LineStep pass(LineAir in, LineFlow flow, LineSurroundings around) {
    return LineStep.cooled(
        LineStep.Where.COLD_STRETCH, in, in.at(around.coldest()), flow, LineSite.COLDEST);
  }
}
