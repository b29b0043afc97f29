package org.shopclime.run;

import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.shopclime.balance.DayDrivers;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DaySlots;
import org.shopclime.balance.ShopModel;

/** The working and the idle day of a shop, laid out once for all runs of one model. */
final class ShopDays {

  private final ShopModel model;
  private final Map<DayKind, DayDrivers> drivers = new EnumMap<>(DayKind.class);
  private final Map<DayKind, double[]> latentGains = new EnumMap<>(DayKind.class);
  private final DaySlots working;
  private final DaySlots attended;
  private final int start;

  ShopDays(ShopModel model) {
    this.model = model;
    for (DayKind kind : DayKind.values()) {
      drivers.put(kind, model.drivers(kind, component -> true, 0));
      latentGains.put(kind, model.latentGains(kind));
    }
    working = model.working();
    attended = working.withoutBreaks();
    boolean throughMidnight =
        attended.at(0) > 0 && attended.at(DaySlots.COUNT - 1) > 0 && attended.hours() < 24;
    start = throughMidnight ? working.firstActiveSlot() / DaySlots.PER_HOUR * DaySlots.PER_HOUR : 0;
  }

  ShopModel model() {
    return model;
  }

  DayDrivers drivers(DayKind kind) {
    return drivers.get(kind);
  }

  /** Water given off, kg/s, 288 slots for each room. */
  double[] latentGains(DayKind kind) {
    return latentGains.get(kind);
  }

  /** Whether somebody is there, breaks included, so that the unit is on. */
  boolean attended(int slot) {
    return attended.at(slot) > 0;
  }

  /**
   * Slot a day is run from: midnight, or the hour in which work begins where work goes on through
   * midnight, so that no working day starts in the middle of a shift.
   */
  int start() {
    return start;
  }

  /**
   * Hours that must be held: work goes on in them, all of them lies between start and end of work,
   * and they begin no sooner than the time allowed to cool down after the start. Where that leaves
   * none, the last hour with work in it; none at all where nobody ever works.
   */
  Set<Integer> judged() {
    Set<Integer> hours = new TreeSet<>();
    int begin = working.firstActiveSlot();
    int last = -1;
    for (int since = 0; since < DaySlots.COUNT; since++) {
      int slot = (begin + since) % DaySlots.COUNT;
      if (begin >= 0 && working.at(slot) > 0) {
        last = slot;
      }
      boolean counts =
          begin >= 0
              && slot % DaySlots.PER_HOUR == 0
              && since * DaySlots.SECONDS >= model.pullDown()
              && working.mean(slot, DaySlots.PER_HOUR) > 0
              && attended.mean(slot, DaySlots.PER_HOUR) == 1;
      if (counts) {
        hours.add(slot / DaySlots.PER_HOUR + 1);
      }
    }
    if (hours.isEmpty() && last >= 0) {
      hours.add(last / DaySlots.PER_HOUR + 1);
    }
    return hours;
  }
}
