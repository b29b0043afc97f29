package org.shopclime.unit;

import org.shopclime.air.AirState;

/**
 * A window or through-wall unit as a plant of the room: all heat it takes and all power it draws go
 * outdoors, and so does its condensate.
 *
 * @param unit the unit
 * @param cycling how it runs on and off
 */
public record WindowUnit(RoomUnit unit, Cycling cycling) implements RoomPlant {

  @Override
  public RoomEffect at(AirState room, AirState outdoor, double demand) {
    Figures.requireQuestion(room, outdoor, demand);
    return RoomEffect.ofCoil(
        unit.at(outdoor.dryBulb(), room), demand, cycling, unit.ratedLatent(), room);
  }
}
