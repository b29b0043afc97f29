package org.shopclime.shop;

/** How sun let in through the glass is followed inside a room. */
public enum SunInsideWay {
  /**
   * Direct sun falls on the floor; what the floor throws back, and scattered sun, is spread by
   * area.
   */
  PLAIN,
  /**
   * Direct sun falls on the floor and the walls that it reaches, in a room taken as a box; what
   * each throws back, and scattered sun, is spread by what each side sees of the others.
   */
  TRACED,
  /** All sun ends on the faces by the share that each of them says; the rest is lost outdoors. */
  SHARES
}
