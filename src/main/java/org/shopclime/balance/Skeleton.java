package org.shopclime.balance;

import java.util.List;
import org.shopclime.shop.Room;

/**
 * The heat paths of a shop in one season, before weather and radiation are known.
 *
 * @param rooms rooms in the owner's order
 * @param components lines that loads are told by
 * @param pieces chains
 * @param air what lets air into each room
 * @param gains what gives off heat
 * @param stores what takes up water, by room
 * @param ways what stands open between rooms
 */
record Skeleton(
    List<Room> rooms,
    List<Component> components,
    List<Piece> pieces,
    List<RoomAir> air,
    List<GainPlace> gains,
    List<MoistureStore> stores,
    List<Passages.Way> ways) {

  /** The same paths of rooms held at other temperatures. */
  Skeleton with(List<Room> others) {
    return new Skeleton(others, components, pieces, air, gains, stores, ways);
  }

  /**
   * A gain with its line.
   *
   * @param component line
   * @param gain the owner's gain
   */
  record GainPlace(Component component, org.shopclime.shop.Gain gain) {}
}
