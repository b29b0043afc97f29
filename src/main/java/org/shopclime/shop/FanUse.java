package org.shopclime.shop;

/** What a fan is for. Fumes are never returned to a room. */
public enum FanUse {
  /** Anything else. */
  OTHER,
  /** Dust collector. */
  DUST_COLLECTOR,
  /** Vacuum of a blast cabinet. */
  BLAST_CABINET,
  /** Exhaust while spraying or painting. */
  SPRAY,
  /** Hood or vent of a curing oven. */
  OVEN_HOOD,
  /** Fan of a compressor closet. */
  CLOSET_FAN;

  /**
   * Whether its air may carry fumes.
   *
   * @return true for paint and ovens
   */
  public boolean hasFumes() {
    return this == SPRAY || this == OVEN_HOOD;
  }
}
