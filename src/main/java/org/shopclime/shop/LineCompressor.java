package org.shopclime.shop;

import java.util.Optional;

/**
 * The compressor that compressed air of a shop comes from: the first one listed that is not a toy.
 *
 * @param room index of the room it is listed in
 * @param gain index among the gains of that room
 * @param machine as it is listed
 */
public record LineCompressor(int room, int gain, Gain.Compressor machine) {

  /** Smallest motor that is reckoned, W. */
  public static final double LEAST_POWER = 50;

  /**
   * The compressor of a shop.
   *
   * @param shop the shop
   * @return nothing where none is listed
   */
  public static Optional<LineCompressor> of(Shop shop) {
    for (int room = 0; room < shop.rooms().size(); room++) {
      Room each = shop.rooms().get(room);
      for (int gain = 0; gain < each.gains().size(); gain++) {
        if (each.gains().get(gain) instanceof Gain.Compressor machine
            && machine.power() >= LEAST_POWER) {
          return Optional.of(new LineCompressor(room, gain, machine));
        }
      }
    }
    return Optional.empty();
  }

  /** Place of what its owner says of its running time. */
  String dutyPath() {
    return "rooms[" + room + "].gains[" + gain + "].duty";
  }
}
