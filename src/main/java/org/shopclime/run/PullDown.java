package org.shopclime.run;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntPredicate;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DaySlots;

/**
 * The morning of the first working day after days off: how warm the room is, how long the unit
 * takes to bring it down, and when it must be switched on for the first hour of work to be held.
 *
 * <p>Times are told to five minutes, the length of the steps.
 *
 * @param start room air as work starts with the unit off until then, °C
 * @param minutes from there until the mean of a step counts as held, 5 or more, 0 if it does at
 *     once; empty if it does not before work ends
 * @param lead minutes before work at which the unit must be switched on so that the mean of its
 *     first hour counts as held; empty if not even since midnight is enough. Air alone comes down
 *     in minutes, but walls and things warm it again as soon as work begins
 * @param soaked the same of a shop that is come to at the hottest time of a day off; nothing where
 *     that counts as held
 */
public record PullDown(
    double start, OptionalInt minutes, OptionalInt lead, Optional<Soaked> soaked) {

  private static final int MINUTES = 5;

  /**
   * A morning alone.
   *
   * @param start room air as work starts with the unit off until then, °C
   * @param minutes from there until the mean of a step counts as held
   * @param lead minutes before work at which the unit must be switched on
   */
  public PullDown(double start, OptionalInt minutes, OptionalInt lead) {
    this(start, minutes, lead, Optional.empty());
  }

  /**
   * A shop that has soaked heat on a day off, and is come to when it is hottest.
   *
   * @param start room air then, °C
   * @param hour hour of the day that it is in, hour ending 1 to 24
   * @param minutes with the unit on, and no work, until the mean of a step counts as held; empty if
   *     it does not before the day ends
   */
  public record Soaked(double start, int hour, OptionalInt minutes) {

    private static Optional<Soaked> of(
        ShopDays days, DayRunner.State idle, Cooling cooling, int room) {
      double limit = days.model().setPoint(room) + LivedDay.TOLERANCE;
      double[] off = air(days, idle, Optional.empty(), room, DayKind.IDLE);
      int hottest = days.start();
      for (int since = 0; since < DaySlots.COUNT; since++) {
        int slot = (days.start() + since) % DaySlots.COUNT;
        hottest = off[slot] > off[hottest] ? slot : hottest;
      }
      if (off[hottest] <= limit) {
        return Optional.empty();
      }
      double[] on = air(days.visitedFrom(hottest), idle, Optional.of(cooling), room, DayKind.IDLE);
      int left = DaySlots.COUNT - Math.floorMod(hottest - days.start(), DaySlots.COUNT);
      OptionalInt minutes = untilHeld(on, hottest, since -> since < left, limit);
      return Optional.of(new Soaked(off[hottest], hottest / DaySlots.PER_HOUR + 1, minutes));
    }
  }

  /**
   * Finds it.
   *
   * @param days the shop on a day
   * @param idle the state that idle days end in
   * @param cooling the unit
   * @param room index of its room
   * @return the morning; nothing if nobody ever works
   * @throws RoomTooHot if a room gets hotter than 80 °C; the message names it
   */
  static Optional<PullDown> of(ShopDays days, DayRunner.State idle, Cooling cooling, int room) {
    int first = days.firstSlot();
    if (first < 0) {
      return Optional.empty();
    }
    double limit = days.model().setPoint(room) + LivedDay.TOLERANCE;
    double[] air = air(days, idle, Optional.of(cooling), room, DayKind.WORKING);
    double start = air[Math.floorMod(first - 1, DaySlots.COUNT)];
    OptionalInt minutes =
        start <= limit
            ? OptionalInt.of(0)
            : untilHeld(
                air, first, since -> days.attended((first + since) % DaySlots.COUNT), limit);
    int most = Math.floorMod(first - days.start(), DaySlots.COUNT);
    return Optional.of(
        new PullDown(
            start,
            minutes,
            lead(days, idle, cooling, room, minutes, most),
            Soaked.of(days, idle, cooling, room)));
  }

  /**
   * Minutes until the mean of a slot counts as held, within a day.
   *
   * @param air mean room air of each slot, °C
   * @param from slot that they are counted from
   * @param goesOn whether the unit is still on so many slots later
   * @param limit highest mean that counts as held, °C
   */
  private static OptionalInt untilHeld(double[] air, int from, IntPredicate goesOn, double limit) {
    for (int since = 0; since < DaySlots.COUNT && goesOn.test(since); since++) {
      if (air[(from + since) % DaySlots.COUNT] <= limit) {
        return OptionalInt.of((since + 1) * MINUTES);
      }
    }
    return OptionalInt.empty();
  }

  private static OptionalInt lead(
      ShopDays days,
      DayRunner.State idle,
      Cooling cooling,
      int room,
      OptionalInt minutes,
      int most) {
    if (isHeld(days, idle, cooling, room, 0)) {
      return OptionalInt.of(0);
    }
    int fails = 0;
    int holds = most;
    if (most == 0 || !isHeld(days, idle, cooling, room, most)) {
      return OptionalInt.empty();
    }
    // It takes about as long as beside the work, so the search begins there.
    int next = minutes.isPresent() ? minutes.getAsInt() / MINUTES : most / 2;
    while (holds - fails > 1) {
      int slots = Math.max(fails + 1, Math.min(holds - 1, next));
      if (isHeld(days, idle, cooling, room, slots)) {
        holds = slots;
      } else {
        fails = slots;
      }
      next = (fails + holds) / 2;
    }
    return OptionalInt.of(holds * MINUTES);
  }

  /** Whether the first hour of work is held if the unit is switched on so much earlier. */
  private static boolean isHeld(
      ShopDays days, DayRunner.State idle, Cooling cooling, int room, int early) {
    double[] air =
        air(days.switchedOnEarlier(early), idle, Optional.of(cooling), room, DayKind.WORKING);
    double mean = 0;
    for (int since = 0; since < DaySlots.PER_HOUR; since++) {
      mean += air[(days.firstSlot() + since) % DaySlots.COUNT] / DaySlots.PER_HOUR;
    }
    return mean <= days.model().setPoint(room) + LivedDay.TOLERANCE;
  }

  /** Mean room air of each slot of a day after idle ones, °C. */
  private static double[] air(
      ShopDays days, DayRunner.State idle, Optional<Cooling> cooling, int room, DayKind kind) {
    DayRunner runner = new DayRunner(days, cooling, room);
    DayLedger ledger = new DayLedger(days.model().rooms());
    runner.restore(idle);
    runner.audit(ledger);
    runner.run(kind);
    return ledger.air[room];
  }
}
