package org.shopclime.balance;

/**
 * Takes what drives the network through a day, told component by component. Arrays and profiles are
 * not to be changed.
 */
public interface PartSink {

  /**
   * Temperature before or below the outer face of a chain; its boundary has the same number.
   *
   * @param component index of the component
   * @param chain number of the chain
   * @param celsius °C by the hour
   */
  void boundary(int component, int chain, Profile celsius);

  /**
   * Sun on the outer (left) face of a chain.
   *
   * @param component index of the component that brings it
   * @param chain number of the chain
   * @param watts W by the hour
   */
  void left(int component, int chain, Profile watts);

  /**
   * Sun on the inner (right) face of a chain.
   *
   * @param component index of the component that brings it
   * @param chain number of the chain
   * @param watts W by the hour
   */
  void right(int component, int chain, Profile watts);

  /**
   * Sun that is shared among faces.
   *
   * @param component index of the component that brings it
   * @param shares share of each side: the outer one of chain k at 2 k, the inner one at 2 k + 1
   * @param watts W by the hour
   */
  void faces(int component, double[] shares, Profile watts);

  /**
   * Sensible heat of a gain.
   *
   * @param component index of the component
   * @param room index of the room
   * @param convective W in each five-minute slot, into the air
   * @param radiant W in each five-minute slot, onto the faces
   */
  void gain(int component, int room, double[] convective, double[] radiant);
}
