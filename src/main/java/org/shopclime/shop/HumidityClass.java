package org.shopclime.shop;

/** Humidity classes of ISO 13788 that have an upper end. */
public enum HumidityClass {
  /** Unoccupied buildings, dry stores. */
  CLASS_1,
  /** Offices and shops. */
  CLASS_2,
  /** Buildings with many people, or of unknown use. */
  CLASS_3,
  /** Sports halls, kitchens, wet work. */
  CLASS_4
}
