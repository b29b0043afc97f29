package org.shopclime.run;

import org.shopclime.air.AirState;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.ShopModel;
import org.shopclime.heat.Drivers;

/**
 * Air between the place of a machine, the work room and outdoors in one step. What flows follows
 * the air of the place, and that the flow; the air at which it is taken is brought near in rounds.
 */
final class PlaceAir {

  /**
   * How near the air at which the flow is taken must be to the air of the step, K: as near as the
   * air that a unit takes in.
   */
  private static final double NEAR = 0.02;

  /**
   * Part of a miss by which the next guess is moved: a flow that goes by the root of a difference
   * answers a guess that is too high by half as much too low.
   */
  private static final double ONWARD = 2.0 / 3;

  private final ShopModel model;
  private final PlacedMachine machine;
  private double guess;
  private double fromRoom;
  private double fromOutdoors;
  private double toRoom;
  private double through;
  private double heatFromRoom;
  private double heatToRoom;

  PlaceAir(ShopModel model, PlacedMachine machine) {
    this.model = model;
    this.machine = machine;
  }

  /** Begins a step with the place as it stands. */
  void begin(double celsius) {
    guess = celsius;
  }

  /** Moves the guess towards what it led to. */
  void move(double found) {
    guess += ONWARD * (found - guess);
  }

  boolean isFound(double found) {
    return Math.abs(found - guess) < NEAR;
  }

  /**
   * Lets air flow as it does at the guess.
   *
   * @param kind working or idle day
   * @param slot first five-minute slot
   * @param slots number of slots
   * @param room air of the work room, °C
   * @param water humidity ratio of the work room, kg/kg
   * @param drivers takes the air between place and room
   */
  void flow(DayKind kind, int slot, int slots, double room, double water, Drivers drivers) {
    int hour = slot / org.shopclime.balance.DaySlots.PER_HOUR + 1;
    double pressure = model.pressure();
    AirState outdoors =
        new AirState(model.outdoor(hour), model.outdoorHumidityRatio(hour), pressure);
    double dry = Math.min(water, MoistAir.saturationHumidityRatio(room, pressure));
    AirState inside = new AirState(room, Math.max(0, dry), pressure);
    double use = machine.use(kind, slot, slots);
    PlacedMachine.Passage passage = machine.passage();
    double forwards = passage.dryAir(guess, inside, outdoors, use);
    double passing = Math.abs(forwards);
    boolean comesFromRoom = forwards >= 0 ? passage.fromRoom() : passage.toRoom();
    boolean goesToRoom = forwards >= 0 ? passage.toRoom() : passage.fromRoom();
    boolean drawnFromRoom = passing > 0 ? comesFromRoom : passage.stillFromRoom();
    double drawn = use * machine.intake().at(hour);
    fromRoom = (comesFromRoom ? passing : 0) + (drawnFromRoom ? drawn : 0);
    fromOutdoors = (comesFromRoom ? 0 : passing) + (drawnFromRoom ? 0 : drawn);
    toRoom = goesToRoom ? passing : 0;
    double leaves = comesFromRoom == goesToRoom ? 0 : comesFromRoom ? passing : -passing;
    // What the machine draws is let out in the room, wherever it comes from.
    through = leaves - (drawnFromRoom ? 0 : drawn);
    double heat =
        MoistAir.humidHeat(comesFromRoom ? inside.humidityRatio() : outdoors.humidityRatio());
    heatFromRoom = fromRoom * MoistAir.humidHeat(inside.humidityRatio());
    heatToRoom = toRoom * heat;
    drivers.exchange(machine.room(), machine.place(), heatFromRoom);
    drivers.exchange(machine.place(), machine.room(), heatToRoom);
  }

  /** Heat that the air on this way carries from a room into another for each kelvin, W/K. */
  double heat(int from, int to) {
    if (from == machine.room() && to == machine.place()) {
      return heatFromRoom;
    }
    return from == machine.place() && to == machine.room() ? heatToRoom : 0;
  }

  /** Room the machine stands in. */
  int place() {
    return machine.place();
  }

  /** Outdoor air that comes straight into a room on this way, kg/s. */
  double outdoorAir(int room) {
    return room == machine.place() ? fromOutdoors : 0;
  }

  /** Air that leaves a room for outdoors by way of the place, kg/s; below 0 the other way. */
  double through(int room) {
    return room == machine.room() ? through : 0;
  }

  /** Air that comes into a room from the one on the other side, kg/s. */
  double exchange(int into) {
    return into == machine.place() ? fromRoom : into == machine.room() ? toRoom : 0;
  }

  /** The room on the other side. */
  int other(int room) {
    return room == machine.place() ? machine.room() : machine.place();
  }
}
