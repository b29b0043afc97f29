package org.shopclime.shop;

/** A burner in the shop, by how its gases leave. */
public enum FlueKind {
  /** No flame in the shop. */
  NONE,
  /** A water heater alone on a chimney. */
  WATER_HEATER,
  /** Furnace and water heater on one chimney. */
  SHARED_CHIMNEY,
  /** A furnace or heater alone on a chimney. */
  CHIMNEY,
  /** A flue with a fan at the appliance. */
  FAN_ASSISTED,
  /** Sealed, with its own air from outdoors. */
  SEALED,
  /** No flue: its gases stay in the room. */
  UNVENTED
}
