package org.shopclime.unit;

import org.shopclime.air.AirState;

/**
 * A fan that stirs the air of the room: it cools people, never the room, and every watt it draws
 * becomes heat there.
 *
 * @param watts power drawn, W, above 0
 */
public record AirMover(double watts) implements RoomPlant {

  /** Checks the range. */
  public AirMover {
    Figures.requirePositive("fan", watts, "W");
  }

  @Override
  public RoomEffect at(AirState room, AirState outdoor, double demand) {
    Figures.requireQuestion(room, outdoor, demand);
    return RoomEffect.heatOfPower(demand * watts, demand, 0);
  }
}
