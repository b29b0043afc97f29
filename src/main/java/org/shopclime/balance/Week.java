package org.shopclime.balance;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Room;
import org.shopclime.shop.Schedule;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Work;

/** The two days of a shop's week that are run: the busiest working day, and a day of rest. */
final class Week {

  private final Work work;
  private final LocalDate date;
  private final DayOfWeek busiest;
  private final Optional<DayOfWeek> rest;

  Week(Shop shop, LocalDate date) {
    this.work = shop.work();
    this.date = date;
    this.busiest = busiest(shop);
    DayOfWeek free = null;
    for (DayOfWeek day : DayOfWeek.values()) {
      if (free == null && !work.hours().days().contains(day)) {
        free = day;
      }
    }
    this.rest = Optional.ofNullable(free);
  }

  /**
   * A schedule on one of the two days. Where every day is worked, a day of rest keeps only what
   * goes on around the clock.
   */
  DaySlots slots(Schedule schedule, DayKind kind) {
    if (kind == DayKind.WORKING) {
      return DaySlots.of(schedule, work, busiest, date);
    }
    if (schedule.asWork()) {
      return DaySlots.constant(0);
    }
    if (rest.isPresent()) {
      return DaySlots.of(schedule, work, rest.get(), date);
    }
    DaySlots slots = DaySlots.of(schedule, work, busiest, date);
    for (int slot = 0; slot < DaySlots.COUNT; slot++) {
      if (slots.at(slot) == 0) {
        return DaySlots.constant(0);
      }
    }
    return slots;
  }

  /** Working hours of the busiest day. */
  DaySlots working() {
    return DaySlots.of(work.hours(), work, busiest, date);
  }

  /** The working day on which most heat is given off. */
  DayOfWeek busiestDay() {
    return busiest;
  }

  private DayOfWeek busiest(Shop shop) {
    IdentityHashMap<Gain, Map<List<Double>, Double>> batches = new IdentityHashMap<>();
    DayOfWeek best = DayOfWeek.MONDAY;
    double most = -1;
    for (DayOfWeek day : DayOfWeek.values()) {
      if (work.hours().days().contains(day)) {
        Map<Schedule, DaySlots> whens = new HashMap<>();
        double heat = 0;
        for (Room room : shop.rooms()) {
          for (Gain gain : room.gains()) {
            DaySlots when =
                whens.computeIfAbsent(gain.when(), each -> DaySlots.of(each, work, day, date));
            heat +=
                isBatches(gain)
                    // Most days are alike, and a day of an oven takes time.
                    ? batches
                        .computeIfAbsent(gain, each -> new HashMap<>())
                        .computeIfAbsent(values(when), each -> ofBatches(gain, room, when))
                    : GainHeat.fullOn(gain, room.setPoint()).total() * when.hours();
          }
        }
        if (heat > most) {
          most = heat;
          best = day;
        }
      }
    }
    return best;
  }

  private static boolean isBatches(Gain gain) {
    return gain instanceof Gain.Oven oven && oven.batches().isPresent();
  }

  /** What a day of batches gives the room, W·h. */
  private static double ofBatches(Gain gain, Room room, DaySlots when) {
    GainCourse course = GainCourse.of(gain, room.setPoint(), when);
    double sum = 0;
    for (int slot = 0; slot < DaySlots.COUNT; slot++) {
      sum += course.sensible(slot);
    }
    return sum / DaySlots.PER_HOUR;
  }

  private static List<Double> values(DaySlots when) {
    return IntStream.range(0, DaySlots.COUNT).mapToObj(when::at).toList();
  }
}
