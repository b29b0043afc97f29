package org.shopclime.balance;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.shopclime.leakage.DoorExchange;
import org.shopclime.shop.Fan;
import org.shopclime.shop.Gain;
import org.shopclime.shop.Schedule;

/**
 * What lets outdoor air into a room.
 *
 * @param leakage line of the leaks
 * @param leakageArea effective leakage area at 4 Pa, m²; 0 where air changes are constant
 * @param constantFlow constant flow, m³/s; 0 where the leakage follows weather
 * @param fans fans with their lines
 * @param doors doors with their lines
 */
record RoomAir(
    Component leakage,
    double leakageArea,
    double constantFlow,
    List<FanPlace> fans,
    List<DoorPlace> doors) {

  /**
   * A fan with its line.
   *
   * @param component line
   * @param fan the owner's fan
   * @param oven the oven whose vent it is: it runs while a batch is in it
   */
  record FanPlace(Component component, Fan fan, Optional<Gain.Oven> oven) {

    /** Part of each slot in which it runs. */
    DaySlots runs(double roomCelsius, Function<Schedule, DaySlots> day) {
      DaySlots when = day.apply(fan.when());
      if (oven.isPresent()) {
        return OvenDays.use(OvenDays.of(oven.get(), roomCelsius, when));
      }
      return fan.pauses() ? DaySlots.opened(when, fan.minutes()) : when;
    }
  }

  /**
   * A door that is opened.
   *
   * @param component line
   * @param width m
   * @param height m
   * @param secondsPerHour time open in an hour of {@code when}, s
   * @param when hours in which it is opened
   * @param screen what hangs or blows in the doorway
   */
  record DoorPlace(
      Component component,
      double width,
      double height,
      double secondsPerHour,
      Schedule when,
      DoorExchange.Protection screen) {}
}
