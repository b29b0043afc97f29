package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.envelope.Season;
import org.shopclime.gain.OvenDay;
import org.shopclime.shop.Clock;
import org.shopclime.shop.Fan;
import org.shopclime.shop.FanUse;
import org.shopclime.shop.FanWay;
import org.shopclime.shop.Gain;
import org.shopclime.shop.OvenBatches;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Span;
import org.shopclime.shop.Warning;

class OvenBatchLineTest {

  private static final double CELSIUS = 25.6;

  private static Gain.Oven oven(Optional<Double> number, double vent, String when) {
    return new Gain.Oven(
            "Oven", 1, 1, 1.2, Span.known(1.4), 204, 6000, 22.7, 0, TestShops.when(when))
        .withBatches(Optional.of(new OvenBatches(number, 22.7, 0.003, 1200, 60, vent, 1)));
  }

  private static DaySlots slots(String when) {
    return DaySlots.of(
        TestShops.when(when),
        TestShops.work("Mon-Fri 8:00-17:00", Clock.STANDARD),
        DayOfWeek.MONDAY,
        LocalDate.of(2025, 7, 21));
  }

  /** Without a number one begins with each period; with one they are spread evenly. */
  @Test
  void startsAreThePeriodsOrEvenlySpread() {
    OvenBatches periods = oven(Optional.empty(), 0, "work").batches().orElseThrow();
    assertThat(OvenDays.starts(periods, slots("daily 9:00-9:30, 13:02-14:00")))
        .containsExactly(9 * 3600, 13 * 3600 + 120);
    OvenBatches three = oven(Optional.of(3.0), 0, "work").batches().orElseThrow();
    assertThat(OvenDays.starts(three, slots("daily 9:00-12:00")))
        .containsExactly(9 * 3600, 10 * 3600, 11 * 3600);
    assertThat(OvenDays.starts(three, slots("daily 23:00-24:00"))).hasSize(3);
    assertThat(OvenDays.starts(three, slots("never"))).isEmpty();
    assertThat(OvenDays.starts(periods, slots("always"))).containsExactly(0);
  }

  /** The line's heat is the oven's day, a third of it radiant; with a hood less of the warm air. */
  @Test
  void lineIsTheOvensDay() {
    DaySlots when = slots("daily 13:00-16:00");
    Gain.Oven oven = oven(Optional.of(2.0), 0, "daily 13:00-16:00");
    OvenDay day = OvenDays.of(oven, CELSIUS, when);
    GainCourse course = GainCourse.of(oven, CELSIUS, when);
    GainCourse hooded = GainCourse.of(oven.withExhaust(0.5), CELSIUS, when);
    for (int slot = 0; slot < DaySlots.COUNT; slot++) {
      double radiant = course.full().radiant() * course.radiant().at(slot);
      assertThat(course.sensible(slot)).isCloseTo(day.given(slot), within(1e-9));
      assertThat(radiant).isCloseTo(0.32 * day.given(slot), within(1e-9));
      double taken = when.at(slot) > 0 || day.use(slot) == 1 ? 0.34 : 0;
      if (day.use(slot) == 0 || day.use(slot) == 1) {
        assertThat(hooded.sensible(slot)).isCloseTo((1 - taken) * day.given(slot), within(1e-9));
      }
    }
    assertThat(course.full().latent()).isZero();
  }

  /** 0.01 m³/s through the oven is a line of its own and flows only while a batch is in. */
  @Test
  void ventDrawsAirWhileInUse() {
    Shop shop =
        TestShops.shop(
            room().withGains(List.of(oven(Optional.of(1.0), 0.01, "daily 13:00-14:00"))));
    ShopModel model = ShopModel.cooling(shop, TestShops.constant(35, 3), ShopModel.Holding.HELD);
    int vent = index(model, "Oven vent");
    double[] lines = new double[model.components().size()];
    model.streams().split(0, CELSIUS, DayKind.WORKING, 13 * 12, 1, lines);
    double on = lines[vent];
    model.streams().split(0, CELSIUS, DayKind.WORKING, 11 * 12, 1, lines);
    assertThat(on).isPositive();
    assertThat(lines[vent]).isZero();
  }

  /**
   * A working day of the year gets what the oven's day gives: 3 batches on Monday, none on Sunday.
   */
  @Test
  void yearGetsTheSameHeat() {
    Gain.Oven oven = oven(Optional.of(3.0), 0, "Mon-Fri 13:00-16:00");
    Shop shop = TestShops.shop(room().withGains(List.of(oven)));
    RoomYear year =
        new RoomYear(
            shop,
            SkeletonMaker.of(shop, Season.COOLING),
            0,
            new YearWeek(shop.work(), DayOfWeek.MONDAY));
    double joules = 0;
    double sunday = 0;
    for (int hour = 0; hour < Profile.HOURS; hour++) {
      joules += 3600 * (year.convective(0, hour) + year.radiant(0, hour));
      sunday += year.convective(6, hour) + year.radiant(6, hour);
    }
    OvenBook book =
        OvenDays.book(
            OvenDays.of(oven, shop.rooms().get(0).setPoint(), slots("daily 13:00-16:00")));
    assertThat(joules).isCloseTo(book.room(), within(1e-9 * book.room()));
    assertThat(book.missing()).isCloseTo(0, within(1e-9 * book.heater()));
    assertThat(sunday).isZero();
  }

  private static Room room() {
    return TestShops.box("Shop", RoomUse.COOLED, TestShops.insulation(2), TestShops.insulation(2));
  }

  private static int index(ShopModel model, String name) {
    for (Component component : model.components()) {
      if (component.name().equals(name)) {
        return component.index();
      }
    }
    throw new AssertionError(name);
  }

  /** What is filtered and returned draws nothing; what is led to the hood draws so much less. */
  @Test
  void airOfFans() {
    Fan out = TestShops.fan("Dust", FanWay.OUT, 0.4, "work");
    assertThat(out.exchanged()).isEqualTo(0.4);
    assertThat(out.withLedToHood(0.75).exchanged()).isCloseTo(0.1, within(1e-15));
    assertThat(out.withWay(FanWay.FILTERED_RETURN).exchanged()).isZero();
    Fan pausing = new Fan("Dust", FanWay.OUT, 0.4, out.when(), FanUse.DUST_COLLECTOR, 900, 0);
    DaySlots runs =
        new RoomAir.FanPlace(null, pausing, Optional.empty())
            .runs(CELSIUS, when -> slots("daily 13:00-14:00"));
    assertThat(runs.at(13 * 12 + 2)).isEqualTo(1);
    assertThat(runs.at(13 * 12 + 3)).isZero();
    assertThat(runs.hours()).isCloseTo(0.25, within(1e-12));
  }

  @Test
  void warnsOfWhatCannotBeDone() {
    Gain.Oven many = oven(Optional.of(40.0), 0, "daily 8:00-17:00");
    Gain.Oven vented = oven(Optional.of(1.0), 0.05, "daily 8:00-17:00");
    assertThat(paths(many)).containsExactly("rooms[0].gains[0].batches.number");
    assertThat(paths(vented)).containsExactly("rooms[0].gains[0].heater");
    assertThat(paths(oven(Optional.of(3.0), 0, "daily 8:00-17:00"))).isEmpty();
  }

  private static List<String> paths(Gain.Oven oven) {
    Shop shop = TestShops.shop(room().withGains(List.of(oven)));
    return GainWarnings.of(shop).stream().map(Warning::path).toList();
  }
}
