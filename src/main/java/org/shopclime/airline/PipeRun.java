package org.shopclime.airline;

import org.shopclime.air.MoistAir;

/**
 * A run of metal pipe, such as a long drop leg: its air comes near the air around and loses the
 * water it cannot hold there, before a hose or a tool.
 *
 * <p>Source: heat through a bare wall, -m dh = U dA (T - around), along the pipe; without water
 * this is the exponential T - around = (T in - around) e^(-UA / (m c)). With water, m c holds the
 * heat of condensation too; marched in short stretches. U 10 W/(m²·K) on the outer area, bare metal
 * in still air: common practice (7 to 12). Plastic or rubber hose: half of it.
 *
 * <p>Limits: the flow while a tool draws counts, as that is when air comes warm; air that rests
 * between cools further, which is on the safe side.
 *
 * @param length m, 0 to 500
 * @param diameter outer, m, 0.003 to 0.5
 * @param uValue W/(m²·K), 0 to 100
 * @param site where it hangs
 */
public record PipeRun(double length, double diameter, double uValue, LineSite site)
    implements LinePart {

  /** Usual U of bare metal, W/(m²·K). */
  public static final double BARE_METAL = 10;

  private static final int STRETCHES = 400;
  private static final double SMALL_STEP = 1e-3;

  /** Refuses what is outside the ranges above. */
  public PipeRun {
    Check.within("pipe length, m,", length, 0, 500);
    Check.within("pipe diameter, m,", diameter, 0.003, 0.5);
    Check.within("U of the pipe, W/(m²·K),", uValue, 0, 100);
  }

  /**
   * Conductance of the wall.
   *
   * @return W/K
   */
  public double conductance() {
    return Math.PI * diameter * length * uValue;
  }

  @Override
  public LineStep pass(LineAir in, LineFlow flow, LineSurroundings around) {
    double celsius = celsius(in, flow.drawing(), around.at(site));
    return LineStep.cooled(LineStep.Where.PIPE, in, in.at(celsius), flow, site);
  }

  /** Temperature at its end, °C. */
  private double celsius(LineAir in, double drawing, double around) {
    if (drawing <= 0) {
      return around;
    }
    double units = conductance() / drawing / STRETCHES;
    LineAir air = in;
    for (int i = 0; i < STRETCHES; i++) {
      // Half a stretch tells the slope of enthalpy for the whole of it.
      LineAir half = air.at(next(air, units / 2, around));
      double whole = air.celsius() - around;
      air = air.at(around + whole * Math.exp(-units / slope(half)));
    }
    return air.celsius();
  }

  private static double next(LineAir air, double units, double around) {
    return around + (air.celsius() - around) * Math.exp(-units / slope(air));
  }

  /** Heat taken out for each kelvin of cooling, J/(kg·K), water that drops out included. */
  private static double slope(LineAir air) {
    LineAir colder = air.at(air.celsius() - SMALL_STEP);
    double dropped = air.humidityRatio() - colder.humidityRatio();
    double water = dropped * MoistAir.SPECIFIC_HEAT_WATER * colder.celsius();
    return (air.enthalpy() - colder.enthalpy() - water) / SMALL_STEP;
  }
}
