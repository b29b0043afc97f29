package org.shopclime.shop;

/** How rare the hot day is, by the hours of the station's year that are hotter. */
public enum HotDayLevel {
  /** The hottest hour of the year. */
  HOTTEST,
  /** Passed in 0.4 % of hours, about 35 a year. */
  P0_4,
  /** Passed in 1 % of hours, about 88 a year. */
  P1,
  /** Passed in 2 % of hours, about 175 a year. */
  P2
}
