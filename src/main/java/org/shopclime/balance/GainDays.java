package org.shopclime.balance;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntPredicate;
import org.shopclime.shop.Schedule;

/** What people, lights and machines give off through the two days of a shop's week. */
final class GainDays {

  private final Skeleton skeleton;
  private final Map<DayKind, List<GainCourse>> courses = new EnumMap<>(DayKind.class);

  GainDays(Skeleton skeleton, Week week) {
    this.skeleton = skeleton;
    for (DayKind kind : DayKind.values()) {
      Map<Schedule, DaySlots> slots = new HashMap<>();
      List<GainCourse> day = new ArrayList<>();
      for (Skeleton.GainPlace place : skeleton.gains()) {
        DaySlots when = slots.computeIfAbsent(place.gain().when(), each -> week.slots(each, kind));
        double celsius = skeleton.rooms().get(place.component().room()).setPoint();
        day.add(GainCourse.of(place.gain(), celsius, when));
      }
      courses.put(kind, day);
    }
  }

  /** Puts the sensible heat of the gains that count among the drivers of a day. */
  void addHeat(DayDrivers drivers, DayKind kind, IntPredicate counts) {
    for (int i = 0; i < skeleton.gains().size(); i++) {
      Component component = skeleton.gains().get(i).component();
      if (counts.test(component.index())) {
        GainCourse course = course(i, kind);
        for (int slot = 0; slot < DaySlots.COUNT; slot++) {
          drivers.addGain(
              component.room(),
              slot,
              course.full().convective() * course.convective().at(slot),
              course.full().radiant() * course.radiant().at(slot));
        }
      }
    }
  }

  /** Latent heat of a line, W, by the hour; 0 for lines that are no gains. */
  Profile latent(int component, DayKind kind) {
    Profile watts = Profile.of(hour -> 0);
    for (int i = 0; i < skeleton.gains().size(); i++) {
      if (skeleton.gains().get(i).component().index() == component) {
        GainCourse course = course(i, kind);
        watts =
            watts.plus(
                Profile.of(
                    hour ->
                        course.full().latent()
                            * course
                                .convective()
                                .mean((hour - 1) * DaySlots.PER_HOUR, DaySlots.PER_HOUR)));
      }
    }
    return watts;
  }

  /** Water given off, kg/s, all slots of one room after those of the other. */
  double[] moisture(DayKind kind) {
    double[] gains = new double[skeleton.rooms().size() * DaySlots.COUNT];
    for (int i = 0; i < skeleton.gains().size(); i++) {
      int room = skeleton.gains().get(i).component().room();
      GainCourse course = course(i, kind);
      double moisture = course.full().moisture();
      for (int slot = 0; slot < DaySlots.COUNT; slot++) {
        gains[room * DaySlots.COUNT + slot] += moisture * course.convective().at(slot);
      }
    }
    return gains;
  }

  /** What a gain gives off through a day, by its number in the skeleton. */
  GainCourse course(int gain, DayKind kind) {
    return courses.get(kind).get(gain);
  }
}
