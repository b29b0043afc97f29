package org.shopclime.run;

import java.util.Optional;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DaySlots;
import org.shopclime.balance.Passages;
import org.shopclime.balance.ShopModel;
import org.shopclime.heat.Drivers;
import org.shopclime.heat.ModeMarch;

/**
 * Air that flows into the rooms of a shop and between them in the steps of a day: as it does in the
 * air that a step begins with, then as in that which it leads to.
 */
final class DayAir {

  /** Farthest above outdoors at which leaks of the place of a machine are taken, K. */
  private static final double FARTHEST = 100;

  /** Most rounds in which air between rooms finds that of the step. */
  private static final int MOST_ROUNDS = 12;

  /** How much warmer than outdoors on average rooms are taken to be where a run begins, K. */
  private static final double WARMER = 5;

  private final ShopModel model;
  private final ModeMarch march;
  private final Drivers drivers;
  private final Moisture moisture;
  private final StepInflow outdoors;

  /** Index of the room that is told. */
  private final int told;

  private final Optional<PlacedMachine> machine;

  /** Air of the place of a machine, where it stands in a room of its own. */
  private final Optional<PlaceAir> place;

  /** Air between rooms, where something stands open between them. */
  private final Optional<OpenWays> ways;

  private DayKind kind = DayKind.IDLE;
  private int slot;
  private int slots = 1;

  DayAir(
      ShopDays days,
      ModeMarch march,
      Drivers drivers,
      Moisture moisture,
      StepInflow outdoors,
      int told) {
    model = days.model();
    this.march = march;
    this.drivers = drivers;
    this.moisture = moisture;
    this.outdoors = outdoors;
    this.told = told;
    ways = OpenWays.of(model.passages(), model.rooms());
    machine = days.machine();
    place =
        machine
            .filter(placed -> placed.place() != placed.room())
            .map(placed -> new PlaceAir(model, placed));
  }

  Optional<PlaceAir> place() {
    return place;
  }

  Optional<OpenWays> ways() {
    return ways;
  }

  /** Begins with the steady state under the mean of an idle day. */
  void startSteady() {
    for (int room = 0; room < model.rooms(); room++) {
      meanFlow(room);
    }
    march.startSteady(drivers);
    if (ways.isPresent()) {
      startWays(ways.get());
    }
  }

  private void meanFlow(int room) {
    double flow = 0;
    double heat = 0;
    for (int hour = 1; hour <= 24; hour++) {
      double each =
          model
                  .streams()
                  .total(
                      room,
                      model.meanOutdoor() + WARMER,
                      DayKind.IDLE,
                      (hour - 1) * DaySlots.PER_HOUR,
                      DaySlots.PER_HOUR)
              * MoistAir.humidHeat(model.outdoorHumidityRatio(hour));
      flow += each / 24;
      heat += each * model.outdoor(hour) / 24;
    }
    drivers.inflow(room, flow, flow > 0 ? heat / flow : 0);
  }

  /** Finds the steady state anew with the mean air that passes between rooms. */
  private void startWays(OpenWays open) {
    int idle = Passages.plan(DayKind.IDLE);
    open.begin(
        (way, one, other) -> model.passages().dryAir(way, idle, 0, DaySlots.COUNT, one, other),
        MoistAir.humidHeat(model.outdoorHumidityRatio(1)),
        model::setPoint);
    open.startSteady(march, drivers);
  }

  /** Begins a step: air flows as it does in the air the rooms stand in. */
  void begin(DayKind ofKind, int first, int count) {
    kind = ofKind;
    slot = first;
    slots = count;
    int hour = slot / DaySlots.PER_HOUR + 1;
    outdoors.begin(model.outdoor(hour), model.outdoorHumidityRatio(hour));
    if (place.isPresent()) {
      place.get().begin(march.air(place.get().place()));
      pass(march.air(told));
    }
    if (ways.isPresent()) {
      beginWays(ways.get());
    }
    for (int room = 0; room < model.rooms(); room++) {
      flow(room, march.air(room));
    }
  }

  private void beginWays(OpenWays open) {
    int plan = Passages.plan(kind);
    int first = slot;
    int count = slots;
    open.begin(
        (way, one, other) -> model.passages().dryAir(way, plan, first, count, one, other),
        outdoors.humidHeat(),
        march::air);
    open.flow(drivers, place);
  }

  private void flow(int room, double celsius) {
    double farthest = place.isPresent() ? outdoors.dryBulb() + FARTHEST : celsius;
    double straight = place.isPresent() ? place.get().outdoorAir(room) : 0;
    outdoors.flow(
        room,
        model.streams().total(room, Math.min(celsius, farthest), kind, slot, slots, through(room))
            + straight);
  }

  /** Air that leaves a room by other ways than leaks, fans and doors; below 0 what so comes in. */
  private double through(int room) {
    double through = place.isPresent() ? place.get().through(room) : 0;
    if (machine.isPresent() && machine.get().room() == room) {
      double supply = machine.get().supply().at(slot / DaySlots.PER_HOUR + 1);
      through -= machine.get().use(kind, slot, slots) * supply;
    }
    return through;
  }

  private void pass(double ofRoom) {
    place.get().flow(kind, slot, slots, ofRoom, moisture.humidityRatio(told), drivers);
  }

  /**
   * Lets the air flow as it does in the mean air of the step looked at, or a better guess at it.
   *
   * @param ofRoom air of the told room, °C
   */
  void flowAgain(double ofRoom) {
    if (place.isPresent()) {
      place.get().move(march.meanAir(place.get().place()));
      pass(ofRoom);
    }
    if (ways.isPresent()) {
      ways.get().move(room -> room == told ? ofRoom : march.meanAir(room));
      ways.get().flow(drivers, place);
    }
    for (int room = 0; room < model.rooms(); room++) {
      flow(room, room == told ? ofRoom : march.meanAir(room));
    }
    march.lookAgain(drivers);
  }

  /** Whether the air at which air passes between rooms is near that of the step. */
  boolean isFound() {
    return (place.isEmpty() || place.get().isFound(march.meanAir(place.get().place())))
        && (ways.isEmpty() || ways.get().isFound(march::meanAir));
  }

  /** Brings the air at which air flows near to that of a step in which no unit is on. */
  void settle() {
    flowAgain(march.meanAir(told));
    for (int round = 0; round < MOST_ROUNDS && !isFound(); round++) {
      flowAgain(march.meanAir(told));
    }
  }
}
