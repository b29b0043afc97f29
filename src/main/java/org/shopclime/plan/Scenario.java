package org.shopclime.plan;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The shop on another day, at other work, or with a dusty coil.
 *
 * @param name in the owner's words
 * @param holds whether the shop's own unit holds then; false without a unit
 * @param indoorPeak highest room temperature in judged hours, °C; of the whole day without a unit
 * @param recommended smallest standard size that holds, W; empty if none does
 * @param day how it was lived, where that is kept
 */
public record Scenario(
    String name,
    boolean holds,
    double indoorPeak,
    OptionalDouble recommended,
    Optional<CaseDay> day) {

  /**
   * A case of which only the outcome is kept.
   *
   * @param name in the owner's words
   * @param holds whether the shop's own unit holds then; false without a unit
   * @param indoorPeak highest room temperature in judged hours, °C; of the whole day without a unit
   * @param recommended smallest standard size that holds, W; empty if none does
   */
  public Scenario(String name, boolean holds, double indoorPeak, OptionalDouble recommended) {
    this(name, holds, indoorPeak, recommended, Optional.empty());
  }

  /** The same under another name. */
  Scenario named(String other) {
    return new Scenario(other, holds, indoorPeak, recommended, day);
  }
}
