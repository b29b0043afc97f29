package org.shopclime.plan;

/** A way to run a cooling unit over the week. */
public enum Habit {
  /** Held at the wished temperature all hours. */
  ALWAYS_ON,
  /** Held at a higher temperature outside of work. */
  SET_BACK,
  /** Switched on some time before work, off after it. */
  ON_DEMAND
}
