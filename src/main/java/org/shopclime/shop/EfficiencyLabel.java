package org.shopclime.shop;

/** Which rating an efficiency is. */
public enum EfficiencyLabel {
  /** Cooling for each watt-hour while running. */
  EER,
  /** The same with the standby use of a year added. */
  CEER
}
