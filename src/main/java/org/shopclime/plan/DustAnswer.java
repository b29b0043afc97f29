package org.shopclime.plan;

import java.util.Optional;
import java.util.OptionalDouble;
import org.shopclime.run.Cooling;
import org.shopclime.shop.CoolingUnit;

/**
 * What dust on coil and filter does to the shop's unit on the hot day, between the two ends of what
 * is published: less air through a clean coil, and coils measured dirty. When to brush is the
 * owner's own: how fast dust gathers is not known.
 *
 * @param lostAirflow part of the clean airflow taken as lost, 0 to 0.7
 * @param clean hottest judged hour with a clean coil, °C
 * @param best the kind end
 * @param worst the unkind end
 */
public record DustAnswer(double lostAirflow, double clean, End best, End worst) {

  /**
   * One end.
   *
   * @param capacityLost part of the capacity lost, 0 to 1
   * @param extraEnergy electricity for the same cooling beyond the clean unit's, part of that, 0 or
   *     more
   * @param capacity total capacity lost at the rating point, W
   * @param indoorPeak hottest judged hour, °C
   * @param holds whether the unit holds
   * @param recommended smallest standard size that holds with as much dust, W
   */
  public record End(
      double capacityLost,
      double extraEnergy,
      double capacity,
      double indoorPeak,
      boolean holds,
      OptionalDouble recommended) {}

  /**
   * What a whole answer says of dust.
   *
   * @param answer the answer
   * @return nothing without a unit
   */
  public static Optional<DustAnswer> of(SizeAnswer answer) {
    Optional<CoolingUnit> unit = answer.shop().unit();
    Optional<Scenario> best = named(answer, Scenarios.DUSTY_AT_BEST);
    Optional<Scenario> worst = named(answer, Scenarios.DUSTY_AT_WORST);
    if (unit.isEmpty() || best.isEmpty() || worst.isEmpty()) {
      return Optional.empty();
    }
    double left = Scenarios.dusty(unit.get().airflow());
    double rated = PortableAnswer.asMachine(unit.get()).capacity();
    return Optional.of(
        new DustAnswer(
            1 - left,
            named(answer, Scenarios.BRUSHED)
                .map(Scenario::indoorPeak)
                .orElse(answer.core().indoorPeak()),
            end(Cooling.Dust.LESS_AIR, left, rated, best.get()),
            end(Cooling.Dust.DIRTY_COIL, left, rated, worst.get())));
  }

  private static End end(Cooling.Dust dust, double left, double rated, Scenario lived) {
    double lost = dust.capacityLost(left);
    return new End(
        lost,
        dust.extraEnergy(left),
        lost * rated,
        lived.indoorPeak(),
        lived.holds(),
        lived.recommended());
  }

  private static Optional<Scenario> named(SizeAnswer answer, String name) {
    return answer.scenarios().stream().filter(each -> each.name().equals(name)).findFirst();
  }
}
