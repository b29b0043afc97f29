package org.shopclime.airline;

/** A part of the line that changes the air that passes. */
public sealed interface LinePart
    permits DischargeTube,
        Aftercooler,
        AirTank,
        PipeRun,
        ColdStretch,
        RefrigeratedDryer,
        Desiccant {

  /**
   * Lets air pass.
   *
   * @param in air that comes
   * @param flow how much
   * @param around temperatures around the line
   * @return what became of it
   */
  LineStep pass(LineAir in, LineFlow flow, LineSurroundings around);

  /**
   * Part of the air that it lets go for its own use.
   *
   * @return 0 to below 1
   */
  default double purgeShare() {
    return 0;
  }
}
