package org.shopclime.run;

import java.util.function.Function;
import org.shopclime.unit.AdjustedCapacity;
import org.shopclime.unit.PortableUnit;
import org.shopclime.unit.Rating;
import org.shopclime.unit.RoomPlant;

/**
 * What stands behind the carton of a portable unit, where two capacities are told: the machine, and
 * what is left of it after hose and air drawn in ({@link AdjustedCapacity}).
 *
 * @param capacity what the machine takes out at the rating point, before hose and air drawn in, W
 * @param eer that for each watt drawn, W/W
 */
public record PortableLabel(double capacity, double eer) {

  /**
   * The machine of a unit by its adjusted capacity. What its hose gives back and the air it draws
   * in are charged hour by hour where it runs, so they are taken out of the label here.
   *
   * @param kind with one hose or two
   * @param adjusted adjusted capacity (SACC), W, above 0
   * @param efficiency of the label, W/W, above 0
   * @param label a CEER goes by the adjusted capacity, an EER by the machine's
   * @return the machine
   * @throws IllegalArgumentException if the unit is not portable, or the label a SEER2
   */
  public static PortableLabel ofAdjusted(
      Cooling.Kind kind, double adjusted, double efficiency, Cooling.Label label) {
    Function<Rating, RoomPlant> build = build(kind);
    Rating machine =
        switch (label) {
          case EER -> AdjustedCapacity.machine(build, adjusted, efficiency);
          case CEER -> AdjustedCapacity.machineByCeer(build, adjusted, efficiency);
          case SEER2 -> throw new IllegalArgumentException(kind + " has no SEER2");
        };
    return new PortableLabel(machine.capacity(), machine.cop());
  }

  /**
   * Adjusted capacity of this machine in a usual unit.
   *
   * @param kind with one hose or two
   * @return SACC, W
   * @throws IllegalArgumentException if the unit is not portable
   */
  public double adjusted(Cooling.Kind kind) {
    return AdjustedCapacity.of(build(kind).apply(Rating.ofCop(capacity, eer)));
  }

  private static Function<Rating, RoomPlant> build(Cooling.Kind kind) {
    return switch (kind) {
      case PORTABLE_ONE_HOSE -> PortableUnit::oneHose;
      case PORTABLE_TWO_HOSES -> PortableUnit::twoHoses;
      default -> throw new IllegalArgumentException(kind + " is not portable");
    };
  }
}
