package org.shopclime.balance;

import java.util.ArrayList;
import java.util.List;
import org.shopclime.shop.Place;

/** Air that enters the rooms of a shop and passes between them through a year. */
final class YearFlows {

  private final YearWeather weather;
  private final AirOpenings openings;
  private final Passages passages;

  /** Openings of each room, by plan of the day. */
  private final List<List<AirOpenings.Plan>> plans = new ArrayList<>();

  YearFlows(Skeleton skeleton, Place place, YearWeather weather, YearWeek week) {
    this.weather = weather;
    openings = new AirOpenings(skeleton, place);
    passages =
        new Passages(
            skeleton.ways(), YearWeek.PLANS, week::slots, weather.pressure(), place.airDensity());
    for (int plan = 0; plan < YearWeek.PLANS; plan++) {
      int of = plan;
      plans.add(AirOpenings.Plan.ofRooms(skeleton, schedule -> week.slots(schedule, of)));
    }
  }

  /** What stands open between rooms. */
  Passages passages() {
    return passages;
  }

  /** Outdoor air entering a room whose air is so warm, °C, on a day of some plan, kg/s. */
  double inflow(int room, double celsius, int hour, int plan) {
    return openings.flow(
        room,
        celsius,
        weather.air(hour),
        plans.get(plan).get(room),
        hour % Profile.HOURS * DaySlots.PER_HOUR,
        DaySlots.PER_HOUR,
        null);
  }
}
