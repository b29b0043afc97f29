package org.shopclime.plan;

import java.util.Optional;
import java.util.OptionalDouble;
import org.shopclime.bill.MonthlyCost;
import org.shopclime.bill.Use;

/**
 * What a year of cooling, heating and drying costs.
 *
 * @param unit electricity the unit draws to cool
 * @param pump electricity it draws to heat; none where it only cools
 * @param heat heat the heater gives; of a heat pump, what that cannot give
 * @param drier electricity of dehumidifiers
 * @param cooling cost of the unit's electricity to cool
 * @param pumping cost of its electricity to heat
 * @param heater cost of the heater's electricity or fuel
 * @param drying cost of the dehumidifiers' electricity
 * @param fuel units of fuel bought in the year; empty with an electric heater
 */
public record YearCost(
    Use unit,
    Use pump,
    Use heat,
    Use drier,
    MonthlyCost cooling,
    MonthlyCost pumping,
    MonthlyCost heater,
    MonthlyCost drying,
    Optional<Double> fuel) {

  /**
   * Heating, by heat pump and heater.
   *
   * @return cost by months
   */
  public MonthlyCost heating() {
    return pumping.plus(heater);
  }

  /**
   * Cooling, heating and drying together.
   *
   * @return cost by months
   */
  public MonthlyCost all() {
    return cooling.plus(heating()).plus(drying);
  }

  /**
   * All through the year.
   *
   * @return $
   */
  public double total() {
    return all().total();
  }

  /**
   * Electricity of unit, heater and dehumidifiers.
   *
   * @return kWh
   */
  public double electricity() {
    return unit.total() + pump.total() + drier.total() + (fuel.isPresent() ? 0 : heat.total());
  }

  /**
   * What a kWh of the unit costs in the mean, when it cools.
   *
   * @return $/kWh; nothing where it draws nothing
   */
  public OptionalDouble unitPrice() {
    double drawn = unit.total();
    return drawn > 0 ? OptionalDouble.of(cooling.total() / drawn) : OptionalDouble.empty();
  }
}
