package org.shopclime.shop;

/** What a heat pump does in winter. */
public enum PumpWinter {
  /** It heats its room as far as it can. */
  HEATS,
  /** It is made to cool only. */
  COOLS_ONLY
}
