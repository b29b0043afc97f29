package org.shopclime.balance;

import java.util.List;
import java.util.Optional;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomCooling;
import org.shopclime.shop.RoomHeating;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;

/**
 * When the plants of a shop's rooms are switched on through a year, and what they hold then; hours
 * are 0 to 8,759, rooms are told by index. Can be read by several threads at once.
 */
public final class PlantHours {

  private final Shop shop;
  private final List<Room> rooms;
  private final List<RoomYear> years;
  private final YearWeek week;

  /** Plan of each day. */
  private final int[] plans;

  private final Optional<CoolingHabit> habit;

  /** Hours of work and the habit's lead, by plan and hour of the day; empty without a habit. */
  private final boolean[][] wished;

  /** The hours that the owner told. */
  PlantHours(Shop shop, List<Room> rooms, List<RoomYear> years, YearWeek week) {
    this(shop, rooms, years, week, Optional.empty());
  }

  private PlantHours(
      Shop shop,
      List<Room> rooms,
      List<RoomYear> years,
      YearWeek week,
      Optional<CoolingHabit> habit) {
    this.shop = shop;
    this.rooms = rooms;
    this.years = years;
    this.week = week;
    this.habit = habit;
    plans = week.plans();
    wished = new boolean[habit.isPresent() ? YearWeek.PLANS : 0][];
    for (int plan = 0; plan < wished.length; plan++) {
      wished[plan] = habit.get().wished(week.slots(shop.work().hours(), plan));
    }
  }

  /** The same with the rooms that the unit cools under a habit. */
  PlantHours under(CoolingHabit other) {
    return new PlantHours(shop, rooms, years, week, Optional.of(other));
  }

  private int plan(int hour) {
    return plans[hour / Profile.HOURS];
  }

  /**
   * Whether the cooling of a room is switched on.
   *
   * @param room index of the room
   * @param hour 0 to 8,759
   * @return true where it is on through half of the hour or more
   */
  public boolean coolingOn(int room, int hour) {
    if (habit.isPresent() && isCooledByUnit(room)) {
      return isWished(hour) || habit.get().away() < Double.POSITIVE_INFINITY;
    }
    return years.get(room).coolingOn(plan(hour), hour % Profile.HOURS);
  }

  /**
   * Whether the heating of a room is switched on.
   *
   * @param room index of the room
   * @param hour 0 to 8,759
   * @return true where it is on through half of the hour or more
   */
  public boolean heatingOn(int room, int hour) {
    return years.get(room).heatingOn(plan(hour), hour % Profile.HOURS);
  }

  /**
   * Temperature a room is cooled to.
   *
   * @param room index of the room
   * @return °C
   */
  public double cooledTo(int room) {
    return rooms.get(room).setPoint();
  }

  /**
   * Temperature a room is cooled to in an hour in which its cooling is on.
   *
   * @param room index of the room
   * @param hour 0 to 8,759
   * @return °C; {@link #cooledTo(int)} unless a habit lets the room get warmer then
   */
  public double cooledTo(int room, int hour) {
    double usual = cooledTo(room);
    return habit.isPresent() && isCooledByUnit(room) && !isWished(hour)
        ? Math.max(usual, habit.get().away())
        : usual;
  }

  private boolean isWished(int hour) {
    return wished[plan(hour)][hour % Profile.HOURS];
  }

  /**
   * Temperature a room is heated to outside of a set-back; where it is cooled too, no higher than
   * it is cooled to, so that the plants never work against each other.
   *
   * @param room index of the room
   * @return °C
   */
  public double heatedTo(int room) {
    return noHigher(room, rooms.get(room).heatedTo().orElse(shop.work().winterTemperature()));
  }

  /**
   * Temperature a room is heated to at the end of a part of an hour, set-back counted. A step of a
   * year's run brings the air to where the set point is when the step ends; while it rises, the
   * mean of the step is so half a step ahead.
   *
   * @param room index of the room
   * @param hour 0 to 8,759
   * @param end when that part ends, as a share of the hour, above 0 to 1; told to five minutes
   * @return °C
   */
  public double heatedTo(int room, int hour, double end) {
    int slots = (int) Math.ceil(end * DaySlots.PER_HOUR - 1e-9);
    int slot = hour % Profile.HOURS * DaySlots.PER_HOUR + slots - 1;
    return noHigher(room, years.get(room).heatedTo(plan(hour), slot));
  }

  private double noHigher(int room, double wishedTemperature) {
    return cooling(room) == RoomCooling.NONE
        ? wishedTemperature
        : Math.min(wishedTemperature, cooledTo(room));
  }

  /**
   * Whether the shop's unit cools a room, where it stands in it.
   *
   * @param room index of the room
   * @return false in a room that floats
   */
  public boolean isCooledByUnit(int room) {
    return cooling(room) == RoomCooling.UNIT;
  }

  /**
   * Whether a plant cools a room that always holds its set point.
   *
   * @param room index of the room
   * @return false in a room that floats
   */
  public boolean isCooledIdeally(int room) {
    return cooling(room) == RoomCooling.IDEAL;
  }

  /**
   * Whether a plant heats a room.
   *
   * @param room index of the room
   * @return false in a room that floats
   */
  public boolean isHeated(int room) {
    Room of = rooms.get(room);
    return of.use() == RoomUse.COOLED && of.heating() == RoomHeating.IDEAL;
  }

  private RoomCooling cooling(int room) {
    Room of = rooms.get(room);
    return of.use() == RoomUse.COOLED ? of.cooling() : RoomCooling.NONE;
  }
}
