package org.shopclime.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.shopclime.quantity.Units;

/** Other ways to use a curing oven; none draws less air than now. */
public final class OvenEdit {

  /**
   * Part of the warm air of box and parts that a canopy with side panels takes: common practice.
   */
  public static final double HOOD_TAKES = 0.8;

  /** Part of a hood's air that is led to it: common practice, so that it still draws. */
  public static final double LED = 0.8;

  /**
   * Air of a hood for each foot of its width, cfm: wall canopy for light duty, model mechanical
   * code, section 507. From memory.
   */
  private static final double CFM_PER_FOOT = 200;

  private static final int DAY = 1440;

  private OvenEdit() {}

  /**
   * All ovens, and the fans that run at the same times, begun when work ends.
   *
   * @param shop shop
   * @return the changed shop; nothing where no oven can be moved so: it is never on, on after work
   *     already, or on too long
   */
  public static Optional<Shop> afterWork(Shop shop) {
    int end = 0;
    for (Schedule.Period period : shop.work().hours().periods()) {
      end = Math.max(end, period.endMinute());
    }
    List<Room> rooms = new ArrayList<>();
    boolean moved = false;
    for (Room room : shop.rooms()) {
      Room changed = room;
      for (Gain gain : room.gains()) {
        if (gain instanceof Gain.Oven oven) {
          Optional<Schedule> later = later(oven.when(), shop.work().hours(), end);
          if (later.isPresent()) {
            changed = moved(changed, oven.when(), later.get());
            moved = true;
          }
        }
      }
      rooms.add(changed);
    }
    return moved ? Optional.of(shop.withRooms(rooms)) : Optional.empty();
  }

  private static Room moved(Room room, Schedule from, Schedule to) {
    return room.withGains(
            room.gains().stream()
                .map(
                    gain ->
                        gain instanceof Gain.Oven oven && oven.when().equals(from)
                            ? oven.withWhen(to)
                            : gain)
                .toList())
        .withFans(
            room.fans().stream()
                .map(fan -> fan.when().equals(from) && !from.asWork() ? fan.withWhen(to) : fan)
                .toList());
  }

  /** The same periods, moved bodily to begin at the end of work. */
  private static Optional<Schedule> later(Schedule when, Schedule work, int end) {
    Schedule told = when.asWork() ? work : when;
    if (told.periods().isEmpty()) {
      return Optional.empty();
    }
    int first = told.periods().get(0).startMinute();
    int last = told.periods().get(told.periods().size() - 1).endMinute();
    int shift = end - first;
    if (shift <= 0 || last + shift > DAY) {
      return Optional.empty();
    }
    List<Schedule.Period> periods =
        told.periods().stream()
            .map(
                each ->
                    new Schedule.Period(
                        each.startMinute() + shift, each.endMinute() + shift, each.fraction()))
            .toList();
    return Optional.of(new Schedule(false, Set.copyOf(told.days()), periods));
  }

  private static boolean isHood(Fan fan) {
    boolean named =
        fan.use() == FanUse.OTHER && fan.name().toLowerCase(Locale.ROOT).contains("oven");
    return (fan.use() == FanUse.OVEN_HOOD || named) && fan.way() == FanWay.OUT && !fan.pauses();
  }

  /**
   * A hood to outdoors over every oven that has none.
   *
   * @param shop shop
   * @param led part of its air that is led to it from outdoors, 0 to 0.8
   * @return the changed shop; nothing where every oven has a hood that takes as much
   */
  public static Optional<Shop> hooded(Shop shop, double led) {
    List<Room> rooms = new ArrayList<>();
    boolean any = false;
    for (Room room : shop.rooms()) {
      List<Gain> gains = new ArrayList<>();
      List<Fan> fans = new ArrayList<>(room.fans());
      for (Gain gain : room.gains()) {
        if (gain instanceof Gain.Oven oven && oven.exhaust() < HOOD_TAKES) {
          any = true;
          gains.add(oven.withExhaust(HOOD_TAKES));
          double flow =
              CFM_PER_FOOT * Units.feet(oven.width()) * Units.CUBIC_METRES_PER_SECOND_PER_CFM;
          // A hood that runs with it already makes way for one that draws no less.
          for (Fan fan : room.fans()) {
            if (isHood(fan) && fan.when().equals(oven.when()) && fans.remove(fan)) {
              flow = Math.max(flow, fan.moved());
            }
          }
          fans.add(
              new Fan(
                  "Hood over " + oven.name(),
                  FanWay.OUT,
                  flow,
                  oven.when(),
                  FanUse.OVEN_HOOD,
                  3600,
                  led));
        } else {
          gains.add(gain);
        }
      }
      rooms.add(room.withGains(gains).withFans(fans));
    }
    return any ? Optional.of(shop.withRooms(rooms)) : Optional.empty();
  }
}
