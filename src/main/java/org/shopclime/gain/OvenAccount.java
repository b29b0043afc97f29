package org.shopclime.gain;

import org.shopclime.quantity.Range;

/**
 * The energy of one batch: what the heater gave is what left, and what the box keeps.
 *
 * @param reached whether the parts came within 5 K of the set point in four hours
 * @param heatUpSeconds from shutting the door until they did
 * @param seconds from the start of loading to the start of the next
 * @param startCelsius box as loading begins, °C
 * @param endCelsius box at the end, °C
 * @param heater electricity, J
 * @param shell through the walls into the room, J
 * @param door out of the open door into the room, J
 * @param exhaust carried outdoors by the fan, J
 * @param parts carried out by the parts, J above the room; they give it to the room
 * @param stored kept by the box, J
 */
public record OvenAccount(
    boolean reached,
    double heatUpSeconds,
    double seconds,
    double startCelsius,
    double endCelsius,
    double heater,
    double shell,
    double door,
    double exhaust,
    double parts,
    double stored) {

  /**
   * All that ends in the room.
   *
   * @return J
   */
  public double room() {
    return shell + door + parts;
  }

  /**
   * Heat to the room in the mean of the batch and the time until the next.
   *
   * @return dry heat, with the radiant share of {@link OvenBox}; none in a room that is hotter
   */
  public HeatGain meanInRoom() {
    return seconds > 0
        ? HeatGain.dry(Math.max(0, room()) / seconds, OvenBox.RADIANT_SHARE)
        : HeatGain.NONE;
  }

  /**
   * Heat that the parts have given to the room.
   *
   * @param batch the batch
   * @param since time since they came out, s, 0 to 1e7
   * @return J
   * @throws IllegalArgumentException if outside that range or NaN
   */
  public double partsGiven(OvenBatch batch, double since) {
    Range.check("time since unloading, s,", since, 0, 1e7);
    return parts * (1 - Math.exp(-since / batch.coolingTime()));
  }

  /**
   * Electricity less all that left or is kept: nothing but rounding.
   *
   * @return J
   */
  public double missing() {
    return heater - shell - door - exhaust - parts - stored;
  }
}
