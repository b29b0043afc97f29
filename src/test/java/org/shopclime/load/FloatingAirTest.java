package org.shopclime.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.shopclime.balance.TestShops.WISHED;
import static org.shopclime.balance.TestShops.box;
import static org.shopclime.balance.TestShops.celsius;
import static org.shopclime.balance.TestShops.constant;
import static org.shopclime.balance.TestShops.dark;
import static org.shopclime.balance.TestShops.fan;
import static org.shopclime.balance.TestShops.gain;
import static org.shopclime.balance.TestShops.insulation;
import static org.shopclime.balance.TestShops.room;
import static org.shopclime.balance.TestShops.shop;
import static org.shopclime.balance.TestShops.swinging;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shopclime.balance.Profile;
import org.shopclime.shop.FanWay;
import org.shopclime.shop.Leakage;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Span;

/** A bag of air beside the shop, without faces: only the air that enters moves its temperature. */
class FloatingAirTest {

  private static Profile air(Room bag) {
    Room held = box("Shop", RoomUse.COOLED, insulation(13), insulation(13));
    return PeakLoad.of(dark(shop(held, bag), swinging())).airTemperature().get(1);
  }

  private static Room bag() {
    return room("Bag", RoomUse.FLOATING, 20, 2.5, WISHED);
  }

  /**
   * dT/dt = n (To - T) under a cosine of 11 °F about 89 °F that peaks at 14:30: amplitude 11 °F /
   * √(1 + (ω/n)²), late by atan(ω/n)/ω; ω = 0.2618/h and n = 0.5 changes an hour, 3 % less for hot
   * air: 9.65 °F, 1.87 h late, so hottest in the hour ending at 17. Outdoor air goes in hourly
   * steps.
   */
  @Test
  void followsOutdoorsAsALumpOfAir() {
    Profile air = air(bag().withLeakage(new Leakage.AirChanges(Span.known(0.5))));
    double changes = 0.5 * 0.97;
    double swing = 11 / 1.8 / Math.hypot(1, 0.2618 / changes);
    double late = Math.atan(0.2618 / changes) / 0.2618;
    for (int hour = 1; hour <= 24; hour++) {
      double exact = celsius(89) + swing * Math.cos(0.2618 * (hour - 15 - late));
      assertThat(air.at(hour)).as("hour %d", hour).isCloseTo(exact, within(0.12));
    }
  }

  /** With a fan that runs from noon to midnight nothing moves in the morning. */
  @Test
  void standsStillWhileNoAirEnters() {
    Profile air = air(bag().withFans(List.of(fan("Fan", FanWay.IN, 0.01, "daily 12:00-24:00"))));
    for (int hour = 2; hour <= 12; hour++) {
      assertThat(air.at(hour)).as("hour %d", hour).isCloseTo(air.at(1), within(1e-9));
    }
    assertThat(air.at(14)).isGreaterThan(air.at(12) + 1);
    assertThat(air.at(24)).isLessThan(air.at(18) - 1);
  }

  /** A fan from midnight to noon leaves the bag at noon's temperature all afternoon. */
  @Test
  void keepsWhatEnteredLast() {
    Profile air = air(bag().withFans(List.of(fan("Fan", FanWay.OUT, 0.1, "daily 0:00-12:00"))));
    assertThat(air.at(20)).isCloseTo(air.at(13), within(1e-9));
    assertThat(air.at(20)).isBetween(celsius(91), celsius(98));
    assertThat(air.at(4)).isCloseTo(celsius(78), within(1.0));
  }

  /**
   * 500 W into the air of a bag with 500 cm² of leaks and hardly any wind: Q = 0.5 √(0.000145 ΔT)
   * m³/s of outdoor air (1.1625 kg/m³, 1025 J/(kg·K)) carries it off at 500 = 7.17 ΔT^1.5: 16.9 K.
   */
  @Test
  void leaksFollowTheRoomsOwnTemperature() {
    Room bag =
        bag()
            .withLeakage(new Leakage.Area(Span.known(0.05)))
            .withGains(List.of(gain("Stove", 500, 0, 0, "always")));
    Room held = box("Shop", RoomUse.COOLED, insulation(13), insulation(13));
    Profile air = PeakLoad.of(dark(shop(held, bag), constant(WISHED, 0.1))).airTemperature().get(1);
    double hand = Math.pow(500 / (0.5 * Math.sqrt(0.000145) * 1.1625 * 1025), 2 / 3.0);
    assertThat(air.at(12) - WISHED).isCloseTo(hand, within(0.05));
  }
}
