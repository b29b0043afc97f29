package org.shopclime.shop;

/** What the wall clock shows in summer. */
public enum Clock {
  /** US daylight saving from the second Sunday of March to the first of November. */
  DAYLIGHT,
  /** Standard time all year, as in most of Arizona and in Hawaii. */
  STANDARD
}
