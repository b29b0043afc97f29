package org.shopclime.plan;

import java.util.Optional;
import java.util.OptionalDouble;
import org.shopclime.bill.MonthlyCost;
import org.shopclime.bill.Use;

/**
 * What a year of cooling and heating costs.
 *
 * @param unit electricity of the unit
 * @param heat heat the heater gives
 * @param cooling cost of the unit's electricity
 * @param heating cost of the heater's electricity or fuel
 * @param fuel units of fuel bought in the year; empty with an electric heater
 */
public record YearCost(
    Use unit, Use heat, MonthlyCost cooling, MonthlyCost heating, Optional<Double> fuel) {

  /**
   * Cooling and heating together.
   *
   * @return cost by months
   */
  public MonthlyCost all() {
    return cooling.plus(heating);
  }

  /**
   * Both through the year.
   *
   * @return $
   */
  public double total() {
    return cooling.total() + heating.total();
  }

  /**
   * Electricity of unit and heater.
   *
   * @return kWh
   */
  public double electricity() {
    return unit.total() + (fuel.isPresent() ? 0 : heat.total());
  }

  /**
   * What a kWh of the unit costs in the mean.
   *
   * @return $/kWh; nothing where it draws nothing
   */
  public OptionalDouble unitPrice() {
    double drawn = unit.total();
    return drawn > 0 ? OptionalDouble.of(cooling.total() / drawn) : OptionalDouble.empty();
  }
}
