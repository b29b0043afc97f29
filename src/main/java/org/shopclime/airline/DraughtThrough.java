package org.shopclime.airline;

import org.shopclime.air.AirState;
import org.shopclime.run.PlacedMachine;

/**
 * The air of a {@link Venting} as a run of the whole shop asks for it; a fan runs while the machine
 * is in use, openings are always open.
 *
 * @param venting how air passes
 * @param still where air comes from that the machine draws while none passes
 */
record DraughtThrough(Venting venting, Side still) implements PlacedMachine.Passage {

  @Override
  public double dryAir(double celsius, AirState room, AirState outdoors, double use) {
    Venting.Draught draught = venting.draught(celsius, new PlaceAround(room, outdoors));
    double share = venting.fan() > 0 ? use : 1;
    boolean backwards = venting.from() != venting.to() && draught.from() == venting.to();
    return share * (backwards ? -draught.dryAir() : draught.dryAir());
  }

  @Override
  public boolean fromRoom() {
    return venting.from() == Side.ROOM;
  }

  @Override
  public boolean toRoom() {
    return venting.to() == Side.ROOM;
  }

  @Override
  public boolean stillFromRoom() {
    return still == Side.ROOM;
  }
}
