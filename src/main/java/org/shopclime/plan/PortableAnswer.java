package org.shopclime.plan;

import java.util.Optional;
import java.util.OptionalDouble;
import org.shopclime.run.Cooling;
import org.shopclime.run.PortableLabel;
import org.shopclime.shop.CoolingUnit;

/**
 * The two capacities of a portable unit: that of its machine, and its SACC, which is left of it
 * after hose and air drawn in.
 *
 * @param typed whether the owner told the SACC; else it is that of a usual unit
 * @param adjusted SACC, W
 * @param machine what the machine takes out at the rating point, W
 * @param eer that for each watt drawn, W/W
 * @param recommended SACC of the smallest size that holds, W; nothing where none does
 */
public record PortableAnswer(
    boolean typed, double adjusted, double machine, double eer, OptionalDouble recommended) {

  /**
   * What a whole answer says of a portable unit.
   *
   * @param answer the answer
   * @return nothing without a portable unit
   */
  public static Optional<PortableAnswer> of(SizeAnswer answer) {
    return answer
        .shop()
        .unit()
        .filter(CoolingUnit::isPortable)
        .map(
            owned -> {
              CoolingUnit machine = asMachine(owned);
              return new PortableAnswer(
                  owned.isAdjusted(),
                  owned.isAdjusted() ? owned.capacity() : adjusted(machine, machine.capacity()),
                  machine.capacity(),
                  machine.efficiency(),
                  answer.recommended().isPresent()
                      ? OptionalDouble.of(adjusted(machine, answer.recommended().getAsDouble()))
                      : OptionalDouble.empty());
            });
  }

  /**
   * A unit by the figures of the machine in it, by which all sizes are compared.
   *
   * @param owned any unit
   * @return the unit itself, or the machine behind a SACC
   */
  public static CoolingUnit asMachine(CoolingUnit owned) {
    if (!owned.isAdjusted()) {
      return owned;
    }
    PortableLabel machine =
        PortableLabel.ofAdjusted(
            Sizing.kind(owned.kind()),
            owned.capacity(),
            owned.efficiency(),
            Cooling.Label.valueOf(owned.label().name()));
    return owned.asRated(machine.capacity(), machine.eer());
  }

  private static double adjusted(CoolingUnit machine, double capacity) {
    return new PortableLabel(capacity, machine.efficiency()).adjusted(Sizing.kind(machine.kind()));
  }
}
