package org.shopclime.balance;

import java.time.LocalDate;
import java.util.List;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Shop;

/**
 * Air that moves past the worker through the busiest working day: the speed told with the work, or
 * that of the fastest work fan of the room that is on for half of the hour or more.
 */
public final class WorkerAir {

  private static final double HALF = 0.5;

  private WorkerAir() {}

  /**
   * Speed by the hour.
   *
   * @param shop the shop
   * @param room index of the room that is worked in
   * @param date date, which decides on daylight saving
   * @return m/s, of each hour ending 1 to 24, local standard time
   */
  public static Profile of(Shop shop, int room, LocalDate date) {
    Week week = new Week(shop, date);
    double[] fastest = new double[Profile.HOURS];
    for (Gain.WorkFan fan : fans(shop, room)) {
      DaySlots on = week.slots(fan.when(), DayKind.WORKING);
      for (int hour = 0; hour < Profile.HOURS; hour++) {
        if (on.mean(hour * DaySlots.PER_HOUR, DaySlots.PER_HOUR) >= HALF) {
          fastest[hour] = Math.max(fastest[hour], fan.airSpeed());
        }
      }
    }
    return Profile.of(hour -> Math.max(shop.work().airSpeed(), fastest[hour - 1]));
  }

  /**
   * The work fans of a room.
   *
   * @param shop the shop
   * @param room index of the room
   * @return in the order of its gains
   */
  public static List<Gain.WorkFan> fans(Shop shop, int room) {
    return shop.rooms().get(room).gains().stream()
        .filter(Gain.WorkFan.class::isInstance)
        .map(Gain.WorkFan.class::cast)
        .toList();
  }
}
