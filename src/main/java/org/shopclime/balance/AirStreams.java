package org.shopclime.balance;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.shopclime.air.MoistAir;
import org.shopclime.climate.HotDay;
import org.shopclime.leakage.BasicLeakage;
import org.shopclime.leakage.DoorExchange;
import org.shopclime.leakage.OutdoorAir;
import org.shopclime.shop.Fan;
import org.shopclime.shop.FanWay;
import org.shopclime.shop.Shelter;

/**
 * Outdoor air that enters each room: leaks by stack and wind, fans, open doors.
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
public final class AirStreams {

  private final Skeleton skeleton;
  private final HotDay day;
  private final double[] stack;
  private final double[] wind;
  private final double[] shelteredWind;
  private final Map<DayKind, DaySlots[][]> fans = new EnumMap<>(DayKind.class);
  private final Map<DayKind, DaySlots[][]> doors = new EnumMap<>(DayKind.class);

  AirStreams(Skeleton skeleton, HotDay day, Shelter shelter, Week week) {
    this.skeleton = skeleton;
    this.day = day;
    int rooms = skeleton.rooms().size();
    stack = new double[rooms];
    wind = new double[rooms];
    shelteredWind = new double[rooms];
    for (DayKind kind : DayKind.values()) {
      fans.put(kind, new DaySlots[rooms][]);
      doors.put(kind, new DaySlots[rooms][]);
    }
    for (int room = 0; room < rooms; room++) {
      double height = skeleton.rooms().get(room).height();
      stack[room] = BasicLeakage.stackCoefficientAt(height);
      wind[room] = BasicLeakage.windCoefficientAt(height, shelter.shelterClass());
      shelteredWind[room] = Math.sqrt(wind[room] / BasicLeakage.windCoefficient(1, 1));
      RoomAir air = skeleton.air().get(room);
      for (DayKind kind : DayKind.values()) {
        fans.get(kind)[room] =
            air.fans().stream()
                .map(place -> week.slots(place.fan().when(), kind))
                .toArray(DaySlots[]::new);
        doors.get(kind)[room] =
            air.doors().stream()
                .map(
                    place ->
                        DaySlots.opened(week.slots(place.when(), kind), place.secondsPerHour()))
                .toArray(DaySlots[]::new);
      }
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
    return fill(room, celsius, kind, slot, slots, null);
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
    fill(room, celsius, kind, slot, slots, byComponent);
  }

  private double fill(
      int room, double celsius, DayKind kind, int slot, int slots, double[] byComponent) {
    RoomAir air = skeleton.air().get(room);
    int hour = slot / DaySlots.PER_HOUR + 1;
    double outdoor = day.dryBulb().at(hour);
    double density = MoistAir.dryAirDensity(outdoor, day.humidityRatio().at(hour), day.pressure());
    double leak =
        air.constantFlow()
            + BasicLeakage.flow(
                air.leakageArea(),
                Math.abs(celsius - outdoor),
                day.wind().at(hour),
                stack[room],
                wind[room]);
    double volume = leak;
    if (byComponent != null) {
      byComponent[air.leakage().index()] = leak * density;
    }
    if (!air.fans().isEmpty()) {
      volume += fans(room, leak, density, kind, slot, slots, byComponent);
    }
    List<RoomAir.DoorPlace> places = air.doors();
    for (int i = 0; i < places.size(); i++) {
      RoomAir.DoorPlace place = places.get(i);
      double open = doors.get(kind)[room][i].mean(slot, slots);
      double flow = 0;
      if (open > 0) {
        double outside = MoistAir.density(outdoor, day.humidityRatio().at(hour), day.pressure());
        double inside = MoistAir.density(celsius, day.humidityRatio().at(hour), day.pressure());
        double dense = DoorExchange.flow(place.width(), place.height(), outside, inside);
        double byTemperature = dense * Math.max(outside, inside) / outside;
        double byWind =
            DoorExchange.windFlow(
                place.width(), place.height(), day.wind().at(hour) * shelteredWind[room]);
        flow = open * Math.max(byTemperature, byWind);
      }
      volume += flow;
      if (byComponent != null) {
        byComponent[place.component().index()] = flow * density;
      }
    }
    return volume * density;
  }

  /** Slot by slot: a fan that runs half the time adds more than half a fan would. */
  private double fans(
      int room,
      double leak,
      double density,
      DayKind kind,
      int slot,
      int slots,
      double[] byComponent) {
    List<RoomAir.FanPlace> places = skeleton.air().get(room).fans();
    DaySlots[] running = fans.get(kind)[room];
    if (byComponent != null) {
      places.forEach(place -> byComponent[place.component().index()] = 0);
    }
    double volume = 0;
    for (int each = slot; each < slot + slots; each++) {
      double out = 0;
      double in = 0;
      double balanced = 0;
      for (int i = 0; i < places.size(); i++) {
        double flow = places.get(i).fan().flow() * running[i].at(each);
        switch (places.get(i).fan().way()) {
          case OUT -> out += flow;
          case IN -> in += flow;
          case BALANCED -> balanced += flow;
        }
      }
      double excess = OutdoorAir.combined(leak, Math.abs(out - in)) - leak;
      double unbalanced = Math.min(in, out) + excess;
      volume += (unbalanced + balanced) / slots;
      if (byComponent != null) {
        double part = in + out == 0 ? 0 : unbalanced / (in + out);
        for (int i = 0; i < places.size(); i++) {
          Fan fan = places.get(i).fan();
          double share = fan.way() == FanWay.BALANCED ? 1 : part;
          byComponent[places.get(i).component().index()] +=
              share * fan.flow() * running[i].at(each) * density / slots;
        }
      }
    }
    return volume;
  }
}
