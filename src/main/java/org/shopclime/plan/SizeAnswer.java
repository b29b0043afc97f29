package org.shopclime.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.shopclime.run.LivedDay;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Warning;

/**
 * The whole answer to "is this unit enough, why, and what would change it".
 *
 * @param shop the shop asked about
 * @param core hot day, loads, lived days
 * @param unit what its own unit does, if it has one
 * @param recommended smallest standard size that holds, W; empty if none does
 * @param band over the unknowns
 * @param changes one change at a time
 * @param scenarios other work, dust, other days
 * @param winter heat lost in the cold
 * @param damp damp in the walls
 * @param air the air of the work room
 * @param oven its curing ovens, if it has any
 * @param warnings what the owner should know beside the figures
 */
public record SizeAnswer(
    Shop shop,
    CoreAnswer core,
    Optional<UnitAnswer> unit,
    OptionalDouble recommended,
    Band band,
    List<Change> changes,
    List<Scenario> scenarios,
    WinterAnswer winter,
    Optional<DampAnswer> damp,
    Optional<AirAnswer> air,
    Optional<OvenAnswer> oven,
    List<Warning> warnings) {

  /**
   * An answer without a look at walls, air and ovens.
   *
   * @param shop the shop asked about
   * @param core hot day, loads, lived days
   * @param unit what its own unit does, if it has one
   * @param recommended smallest standard size that holds, W; empty if none does
   * @param band over the unknowns
   * @param changes one change at a time
   * @param scenarios other work, dust, other days
   * @param winter heat lost in the cold
   * @param warnings what the owner should know beside the figures
   */
  public SizeAnswer(
      Shop shop,
      CoreAnswer core,
      Optional<UnitAnswer> unit,
      OptionalDouble recommended,
      Band band,
      List<Change> changes,
      List<Scenario> scenarios,
      WinterAnswer winter,
      List<Warning> warnings) {
    this(
        shop,
        core,
        unit,
        recommended,
        band,
        changes,
        scenarios,
        winter,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        warnings);
  }

  /** Copies the lists. */
  public SizeAnswer {
    changes = List.copyOf(changes);
    scenarios = List.copyOf(scenarios);
    warnings = List.copyOf(warnings);
  }

  /**
   * Whether the shop's own unit is bigger than is good for it: it holds, a smaller one would, and
   * its runs get short.
   *
   * @return true if too big
   */
  public boolean isTooBig() {
    return unit.isPresent()
        && unit.get().day().holds()
        && recommended.isPresent()
        && recommended.getAsDouble() < unit.get().rated() - 1
        && unit.get().day().mostStarts().map(LivedDay.Starts::tooMany).orElse(false);
  }
}
