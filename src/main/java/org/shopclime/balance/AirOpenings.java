package org.shopclime.balance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.shopclime.air.MoistAir;
import org.shopclime.leakage.BasicLeakage;
import org.shopclime.leakage.DoorExchange;
import org.shopclime.leakage.OutdoorAir;
import org.shopclime.shop.Fan;
import org.shopclime.shop.FanWay;
import org.shopclime.shop.Place;
import org.shopclime.shop.Schedule;

/**
 * How much outdoor air enters each room through leaks, fans and open doors in given air.
 *
 * <p>Leaks and unbalanced fans combine as the root of the sum of squares; balanced and door streams
 * add. "Leakage" is the flow with the fans off, the fans share what they add to it.
 *
 * <p>Source: ASHRAE Handbook - Fundamentals, residential load and infiltration chapters (basic
 * model; combination of natural and fan flows). Through an open door goes what temperature or wind
 * moves, whichever is more ({@link DoorExchange}); wind is that of the station times the root of
 * the wind coefficient over that of a house of one storey without shelter, as the leaks feel it.
 * Limit: wind blowing straight in, or through two doors, moves more.
 */
final class AirOpenings {

  private final Skeleton skeleton;
  private final double[] stack;
  private final double[] wind;
  private final double[] shelteredWind;
  private final Optional<Double> typedDensity;

  AirOpenings(Skeleton skeleton, Place place) {
    this.skeleton = skeleton;
    typedDensity = place.airDensity();
    int rooms = skeleton.rooms().size();
    stack = new double[rooms];
    wind = new double[rooms];
    shelteredWind = new double[rooms];
    for (int room = 0; room < rooms; room++) {
      double height = skeleton.rooms().get(room).height();
      stack[room] = BasicLeakage.stackCoefficientAt(height);
      wind[room] = BasicLeakage.windCoefficientAt(height, place.shelter().shelterClass());
      shelteredWind[room] = Math.sqrt(wind[room] / BasicLeakage.windCoefficient(1, 1));
    }
  }

  /**
   * When the fans and doors of one room are at work on one day.
   *
   * @param fans one for each fan
   * @param doors one for each door that is opened: part of each slot in which it stands open
   */
  record Plan(List<DaySlots> fans, List<DaySlots> doors) {

    /** Those of all rooms, each at its set point. */
    static List<Plan> ofRooms(Skeleton skeleton, Function<Schedule, DaySlots> day) {
      List<Plan> rooms = new ArrayList<>();
      for (int room = 0; room < skeleton.air().size(); room++) {
        rooms.add(of(skeleton.air().get(room), skeleton.rooms().get(room).setPoint(), day));
      }
      return rooms;
    }

    static Plan of(RoomAir air, double roomCelsius, Function<Schedule, DaySlots> day) {
      return new Plan(
          air.fans().stream().map(place -> place.runs(roomCelsius, day)).toList(),
          air.doors().stream()
              .map(place -> DaySlots.opened(day.apply(place.when()), place.secondsPerHour()))
              .toList());
    }
  }

  /**
   * Outdoor air entering a room.
   *
   * @param room index of the room
   * @param celsius its air temperature, °C
   * @param out outdoor air
   * @param plan fans and doors of the day
   * @param slot first five-minute slot
   * @param slots number of slots, within one hour
   * @param byComponent set to the flow of each line, kg of dry air a second, by its index; or null
   * @return kg of dry air a second
   */
  double flow(
      int room, double celsius, HourAir out, Plan plan, int slot, int slots, double[] byComponent) {
    return flow(room, celsius, out, plan, slot, slots, 0, byComponent);
  }

  /**
   * The same for a room that another one takes air from.
   *
   * @param through dry air that leaves it for outdoors by way of another room, kg/s; below 0 where
   *     outdoor air comes into it that way, which is not counted here
   */
  double flow(
      int room,
      double celsius,
      HourAir out,
      Plan plan,
      int slot,
      int slots,
      double through,
      double[] byComponent) {
    RoomAir air = skeleton.air().get(room);
    double density = density(out);
    double leak =
        air.constantFlow()
            + BasicLeakage.flow(
                air.leakageArea(),
                Math.abs(celsius - out.dryBulb()),
                out.wind(),
                stack[room],
                wind[room]);
    double volume = leak;
    if (byComponent != null) {
      byComponent[air.leakage().index()] = leak * density;
    }
    if (!air.fans().isEmpty() || through != 0) {
      double each = through / density;
      volume += fans(air.fans(), plan.fans(), leak, each, density, slot, slots, byComponent);
    }
    for (int i = 0; i < air.doors().size(); i++) {
      RoomAir.DoorPlace place = air.doors().get(i);
      double open = plan.doors().get(i).mean(slot, slots);
      double flow = open > 0 ? open * door(place, room, celsius, out) : 0;
      volume += flow;
      if (byComponent != null) {
        byComponent[place.component().index()] = flow * density;
      }
    }
    return volume * density;
  }

  /** Dry air in a cubic metre of what enters, kg. */
  double density(HourAir out) {
    return typedDensity.isPresent() ? typedDensity.get() : out.dryAirDensity();
  }

  private double door(RoomAir.DoorPlace place, int room, double celsius, HourAir out) {
    double outside = MoistAir.density(out.dryBulb(), out.humidityRatio(), out.pressure());
    double inside = MoistAir.density(celsius, out.humidityRatio(), out.pressure());
    double dense = DoorExchange.flow(place.width(), place.height(), outside, inside);
    double byTemperature = dense * Math.max(outside, inside) / outside;
    double byWind =
        DoorExchange.windFlow(place.width(), place.height(), out.wind() * shelteredWind[room]);
    return Math.max(place.screen().left(byTemperature), byWind);
  }

  /** Slot by slot: a fan that runs half the time adds more than half a fan would. */
  private static double fans(
      List<RoomAir.FanPlace> places,
      List<DaySlots> running,
      double leak,
      double through,
      double density,
      int slot,
      int slots,
      double[] byComponent) {
    if (byComponent != null) {
      places.forEach(place -> byComponent[place.component().index()] = 0);
    }
    double volume = 0;
    for (int each = slot; each < slot + slots; each++) {
      double out = Math.max(0, through);
      double in = Math.max(0, -through);
      double balanced = 0;
      for (int i = 0; i < places.size(); i++) {
        double flow = places.get(i).fan().exchanged() * running.get(i).at(each);
        switch (places.get(i).fan().way()) {
          case OUT -> out += flow;
          case IN -> in += flow;
          case BALANCED -> balanced += flow;
          case FILTERED_RETURN -> {} // stays in the room
        }
      }
      double excess = OutdoorAir.combined(leak, Math.abs(out - in)) - leak;
      double unbalanced = Math.min(in, out) + excess;
      // What comes in by way of another room is that room's outdoor air.
      volume += (unbalanced + balanced - Math.max(0, -through)) / slots;
      if (byComponent != null) {
        double part = in + out == 0 ? 0 : unbalanced / (in + out);
        for (int i = 0; i < places.size(); i++) {
          Fan fan = places.get(i).fan();
          double share = fan.way() == FanWay.BALANCED ? 1 : part;
          byComponent[places.get(i).component().index()] +=
              share * fan.exchanged() * running.get(i).at(each) * density / slots;
        }
      }
    }
    return volume;
  }
}
