package org.shopclime.airline;

/**
 * The tank, in the steady mean of an hour: its wall gives to the place what its air brings, so it
 * is warmer than the place it stands in, and only water that cannot stay vapour at that warmth
 * drops there. The rest goes on.
 *
 * <p>Source: heat balance, U A (T - place) = m [h in - h out - water]. U 8 W/(m²·K), a painted wall
 * in still air by convection and radiation: common practice (5 to 12).
 *
 * <p>Limits: air and wall at one temperature; a tank takes an hour or two to get there, so first
 * hours of work are drier in the pipe and wetter in the tank.
 *
 * @param area outer, m², 0.01 to 100
 * @param uValue from its air to the place, W/(m²·K), 0.1 to 100
 */
public record AirTank(double area, double uValue) implements LinePart {

  /** Usual U, W/(m²·K). */
  public static final double USUAL_U = 8;

  private static final double SMALL = 1e-10;

  /** Refuses what is outside the ranges above. */
  public AirTank {
    Check.within("area of the tank, m²,", area, 0.01, 100);
    Check.within("U of the tank, W/(m²·K),", uValue, 0.1, 100);
  }

  /**
   * The tank of a machine.
   *
   * @param machine the compressor
   * @return its tank, with the usual U
   */
  public static AirTank of(AirCompressor machine) {
    return new AirTank(machine.tankArea(), USUAL_U);
  }

  @Override
  public LineStep pass(LineAir in, LineFlow flow, LineSurroundings around) {
    double celsius = celsius(in, flow.mean(), around.place());
    return LineStep.cooled(LineStep.Where.TANK, in, in.at(celsius), flow, LineSite.PLACE);
  }

  /**
   * Steady temperature of the tank.
   *
   * @param in air that comes
   * @param dryAir kg/s in the mean of the hour, 0 to 10
   * @param place air around it, °C, -50 to 150
   * @return °C, between place and incoming air
   */
  public double celsius(LineAir in, double dryAir, double place) {
    double low = Math.min(place, in.celsius());
    double high = Math.max(place, in.celsius());
    while (high - low > SMALL) {
      double middle = (low + high) / 2;
      if (middle <= low || middle >= high) {
        break;
      }
      double surplus =
          dryAir * LineStep.taken(in, in.at(middle)) - area * uValue * (middle - place);
      if (surplus > 0) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }
}
