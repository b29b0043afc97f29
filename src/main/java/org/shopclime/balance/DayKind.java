package org.shopclime.balance;

/** Which day of the week is run. */
public enum DayKind {
  /** The busiest working day of the week. */
  WORKING,
  /** A day without work. */
  IDLE
}
