package org.shopclime.plan;

/** How a unit fares on the hot day. */
public enum Verdict {
  /** Every judged hour is held, with something to spare. */
  HOLDS,
  /** Held, but flat out for three hours or more, or not two degrees hotter. */
  JUST_HOLDS,
  /** Some judged hours are not held. */
  DRIFTS,
  /** No judged hour is held. */
  NEVER_CATCHES_UP
}
