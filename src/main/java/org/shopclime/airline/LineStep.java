package org.shopclime.airline;

import org.shopclime.air.MoistAir;

/**
 * What became of the air in one part of the line, in the mean of the hour.
 *
 * @param where which kind of part
 * @param out air that leaves it
 * @param dryAir dry air that enters it, kg/s
 * @param drained water that drops out there and must be drained, kg/s
 * @param held water that a drying agent takes up, kg/s
 * @param purge dry air let go, with the water of {@code out} and, where there is such air, what the
 *     agent took up, kg/s
 * @param heat given to its surroundings, W; that of a dryer includes its own electricity
 * @param electric power it draws, W
 * @param site where that heat goes
 */
public record LineStep(
    Where where,
    LineAir out,
    double dryAir,
    double drained,
    double held,
    double purge,
    double heat,
    double electric,
    LineSite site) {

  /** Kinds of parts, in the order in which air usually meets them. */
  public enum Where {
    /** Finned tube between pump and tank. */
    TUBE,
    /** Cooler between pump and tank. */
    AFTERCOOLER,
    /** Tank. */
    TANK,
    /** Dryer of any kind. */
    DRYER,
    /** Metal pipe or drop leg. */
    PIPE,
    /** The coldest stretch. */
    COLD_STRETCH
  }

  /**
   * Step of a part that only cools or warms its air; what drops out is drained at the temperature
   * of the air that leaves.
   */
  static LineStep cooled(Where where, LineAir in, LineAir out, LineFlow flow, LineSite site) {
    double dropped = in.humidityRatio() - out.humidityRatio();
    return new LineStep(
        where,
        out,
        flow.mean(),
        flow.mean() * dropped,
        0,
        0,
        flow.mean() * taken(in, out),
        0,
        site);
  }

  /** Heat taken out of air on its way from one state to another, J per kg of dry air. */
  static double taken(LineAir in, LineAir out) {
    double dropped = in.humidityRatio() - out.humidityRatio();
    return in.enthalpy() - out.enthalpy() - dropped * MoistAir.SPECIFIC_HEAT_WATER * out.celsius();
  }
}
