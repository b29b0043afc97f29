package org.shopclime.balance;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.shopclime.climate.HotDay;
import org.shopclime.shop.Place;

/** Outdoor air that enters each room on a day, by {@link AirOpenings}: leaks, fans, open doors. */
public final class AirStreams {

  private final AirOpenings openings;
  private final HourAir[] outdoors = new HourAir[Profile.HOURS];
  private final Map<DayKind, List<AirOpenings.Plan>> plans = new EnumMap<>(DayKind.class);

  AirStreams(Skeleton skeleton, HotDay day, Place place, Week week) {
    openings = new AirOpenings(skeleton, place);
    for (int hour = 1; hour <= Profile.HOURS; hour++) {
      outdoors[hour - 1] =
          new HourAir(
              day.dryBulb().at(hour),
              day.humidityRatio().at(hour),
              day.pressure(),
              day.wind().at(hour));
    }
    for (DayKind kind : DayKind.values()) {
      plans.put(kind, AirOpenings.Plan.ofRooms(skeleton, schedule -> week.slots(schedule, kind)));
    }
  }

  /**
   * Outdoor air entering a room.
   *
   * @param room index of the room
   * @param celsius its air temperature, °C
   * @param kind working or idle day
   * @param slot first five-minute slot
   * @param slots number of slots, within one hour
   * @return kg of dry air a second
   */
  public double total(int room, double celsius, DayKind kind, int slot, int slots) {
    return flow(room, celsius, kind, slot, slots, null);
  }

  /**
   * Outdoor air entering a room that another one takes air from.
   *
   * @param room index of the room
   * @param celsius its air temperature, °C
   * @param kind working or idle day
   * @param slot first five-minute slot
   * @param slots number of slots, within one hour
   * @param through dry air that leaves it for outdoors by way of another room, kg/s, made up by its
   *     leaks as that of a fan is; below 0 where outdoor air comes in that way, which is not
   *     counted here and keeps leaks back
   * @return kg of dry air a second; below 0 never
   */
  public double total(int room, double celsius, DayKind kind, int slot, int slots, double through) {
    HourAir out = outdoors[slot / DaySlots.PER_HOUR];
    return openings.flow(room, celsius, out, plans.get(kind).get(room), slot, slots, through, null);
  }

  /**
   * Outdoor air entering a room, by line.
   *
   * @param room index of the room
   * @param celsius its air temperature, °C
   * @param kind working or idle day
   * @param slot first five-minute slot
   * @param slots number of slots, within one hour
   * @param byComponent set to the flow of each line, kg of dry air a second, by its index
   */
  public void split(
      int room, double celsius, DayKind kind, int slot, int slots, double[] byComponent) {
    flow(room, celsius, kind, slot, slots, byComponent);
  }

  /** Dry air in a cubic metre of what enters, kg. */
  double density(int hour) {
    return openings.density(outdoors[hour - 1]);
  }

  /** Part of each slot in which each fan of a room runs. */
  List<DaySlots> running(int room, DayKind kind) {
    return plans.get(kind).get(room).fans();
  }

  private double flow(
      int room, double celsius, DayKind kind, int slot, int slots, double[] byComponent) {
    HourAir out = outdoors[slot / DaySlots.PER_HOUR];
    return openings.flow(room, celsius, out, plans.get(kind).get(room), slot, slots, byComponent);
  }
}
