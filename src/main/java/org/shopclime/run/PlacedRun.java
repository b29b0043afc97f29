package org.shopclime.run;

import java.util.List;
import java.util.Optional;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.ShopModel;

/**
 * Days of a shop with a machine in a place: the same network, unit and books of heat, air and water
 * as {@link LivedDay}, with the air that passes the place between its room nodes.
 *
 * <p>Limits: one place. The unit is in the work room.
 */
public final class PlacedRun {

  private final ShopDays days;
  private final int room;
  private Optional<DayRunner.State> rest = Optional.empty();

  /**
   * Runs of a shop.
   *
   * @param model the shop with its place on a day
   * @param room index of the work room, that is told and that the unit cools
   */
  public PlacedRun(ShopModel model, int room) {
    this.days = new ShopDays(model);
    this.room = room;
  }

  /**
   * A day with its rooms.
   *
   * @param lived the work room
   * @param rooms all rooms, on that day
   */
  public record Day(LivedDay lived, List<RoomHours> rooms) {

    /** Keeps a copy. */
    public Day {
      rooms = List.copyOf(rooms);
    }
  }

  /**
   * The day as it is lived.
   *
   * @param machine the machine in its place
   * @param cooling the unit, if any
   * @return the worse of first and repeating working day
   * @throws RoomTooHot if a room gets hotter than 80 °C; the message names it
   */
  public Day lived(PlacedMachine machine, Optional<Cooling> cooling) {
    ShopDays with = days.with(machine);
    DayRunner.State idle = rest.orElse(null);
    if (idle == null) {
      idle = LivedDay.idle(with, room);
      // A machine that rests on idle days leaves the shop alike, however hot it runs on others.
      rest = machine.idle().firstActiveSlot() < 0 ? Optional.of(idle) : Optional.empty();
    }
    LivedDay.Told told =
        LivedDay.told(with, idle, new DayRunner(with, cooling, room), cooling.isPresent(), room);
    return new Day(told.day(), told.rooms());
  }

  /**
   * The working day that repeats with the work room held at one temperature, whatever that takes.
   *
   * @param machine the machine in its place
   * @param celsius temperature held, °C
   * @return all rooms; what holds the work room is its {@link RoomHours#plant}
   * @throws RoomTooHot if a room gets hotter than 80 °C; the message names it
   */
  public List<RoomHours> held(PlacedMachine machine, double celsius) {
    DayRunner runner = new DayRunner(days.with(machine), Optional.empty(), room);
    runner.hold(celsius);
    runner.startSteady();
    RepeatingDay.find(runner, DayKind.WORKING);
    return runner.rooms();
  }
}
