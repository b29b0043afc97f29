package org.shopclime.balance;

/** Takes heat put on the faces of chains, hour by hour; what is added for one place adds up. */
interface HourSink {

  /**
   * Adds heat to a left (outer) face.
   *
   * @param chain number of the chain
   * @param hour hour, from 0
   * @param watts W
   */
  void addLeft(int chain, int hour, double watts);

  /**
   * Adds heat to a right (inner) face.
   *
   * @param chain number of the chain
   * @param hour hour, from 0
   * @param watts W
   */
  void addRight(int chain, int hour, double watts);
}
