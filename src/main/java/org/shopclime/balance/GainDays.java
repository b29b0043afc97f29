package org.shopclime.balance;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.function.IntPredicate;
import org.shopclime.gain.HeatGain;
import org.shopclime.shop.Schedule;

/** What people, lights and machines give off through the two days of a shop's week. */
final class GainDays {

  private final Skeleton skeleton;
  private final Map<DayKind, Map<Schedule, DaySlots>> slots = new EnumMap<>(DayKind.class);

  GainDays(Skeleton skeleton, Week week) {
    this.skeleton = skeleton;
    for (DayKind kind : DayKind.values()) {
      Map<Schedule, DaySlots> day = new HashMap<>();
      for (Skeleton.GainPlace place : skeleton.gains()) {
        day.computeIfAbsent(place.gain().when(), when -> week.slots(when, kind));
      }
      slots.put(kind, day);
    }
  }

  /** Puts the sensible heat of the gains that count among the drivers of a day. */
  void addHeat(DayDrivers drivers, DayKind kind, IntPredicate counts) {
    for (Skeleton.GainPlace place : skeleton.gains()) {
      if (counts.test(place.component().index())) {
        int room = place.component().room();
        HeatGain heat = fullOn(place);
        DaySlots slots = slots(place, kind);
        for (int slot = 0; slot < DaySlots.COUNT; slot++) {
          drivers.addGain(
              room, slot, heat.convective() * slots.at(slot), heat.radiant() * slots.at(slot));
        }
      }
    }
  }

  /** Latent heat of a line, W, by the hour; 0 for lines that are no gains. */
  Profile latent(int component, DayKind kind) {
    Profile watts = Profile.of(hour -> 0);
    for (Skeleton.GainPlace place : skeleton.gains()) {
      if (place.component().index() == component) {
        double latent = fullOn(place).latent();
        DaySlots slots = slots(place, kind);
        watts =
            watts.plus(
                Profile.of(
                    hour ->
                        latent * slots.mean((hour - 1) * DaySlots.PER_HOUR, DaySlots.PER_HOUR)));
      }
    }
    return watts;
  }

  /** Water given off, kg/s, all slots of one room after those of the other. */
  double[] moisture(DayKind kind) {
    double[] gains = new double[skeleton.rooms().size() * DaySlots.COUNT];
    for (Skeleton.GainPlace place : skeleton.gains()) {
      double moisture = fullOn(place).moisture();
      DaySlots slots = slots(place, kind);
      for (int slot = 0; slot < DaySlots.COUNT; slot++) {
        gains[place.component().room() * DaySlots.COUNT + slot] += moisture * slots.at(slot);
      }
    }
    return gains;
  }

  /** How much of a gain goes on through a day. */
  DaySlots slots(Skeleton.GainPlace place, DayKind kind) {
    return slots.get(kind).get(place.gain().when());
  }

  /** What a gain gives off while fully on. */
  HeatGain fullOn(Skeleton.GainPlace place) {
    return GainHeat.fullOn(place.gain(), skeleton.rooms().get(place.component().room()).setPoint());
  }
}
