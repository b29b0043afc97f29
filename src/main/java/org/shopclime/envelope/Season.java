package org.shopclime.envelope;

/** Which of the two sets of surface films holds. */
public enum Season {
  /** Heat flows in; outside wind 7.5 mph. */
  COOLING,
  /** Heat flows out; outside wind 15 mph. */
  HEATING
}
