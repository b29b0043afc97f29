package org.shopclime.shop;

/** Which rating an efficiency is. */
public enum EfficiencyLabel {
  /** Cooling for each watt-hour while running. */
  EER,
  /**
   * The same with the standby use of a year added; beside a SACC that of portable units, which goes
   * by the SACC.
   */
  CEER,
  /** Cooling of a season for the electricity it takes: on heat pumps. */
  SEER2
}
