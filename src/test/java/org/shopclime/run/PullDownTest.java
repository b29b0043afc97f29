package org.shopclime.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.DaySlots;
import org.shopclime.balance.ShopModel;
import org.shopclime.climate.Climates;
import org.shopclime.climate.DesignDays;
import org.shopclime.climate.Level;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Shop;

/** The morning of the first working day; the exponential is in {@link LumpedShopTest}. */
class PullDownTest {

  private static ShopDays days(String example) {
    return new ShopDays(
        ShopModel.cooling(
            Examples.shop(example),
            DesignDays.hotDay(Climates.load().find(MadeShops.MOBILE).orElseThrow(), Level.P1),
            ShopModel.Holding.HELD));
  }

  private static PullDown morning(ShopDays days, double btuh) {
    return PullDown.of(days, LivedDay.idle(days, 0), MadeShops.window(MadeShops.btuh(btuh)), 0)
        .orElseThrow();
  }

  /** Mean of the first hour of work with the unit switched on earlier, °C. */
  private static double firstHour(ShopDays days, double btuh, int slots) {
    DayRunner runner =
        new DayRunner(
            days.switchedOnEarlier(slots), Optional.of(MadeShops.window(MadeShops.btuh(btuh))), 0);
    runner.restore(LivedDay.idle(days, 0));
    runner.run(DayKind.WORKING);
    return runner.trace().air().at(days.firstSlot() / DaySlots.PER_HOUR + 1);
  }

  /** Of a day 5 K hotter: as early as told the first hour is held, five minutes later it is not. */
  @ParameterizedTest
  @ValueSource(strings = {"insulated", "insulated-foam-door"})
  void theTimeToldIsTheLast(String example) {
    ShopDays days = days(example).shifted(5);
    PullDown morning = morning(days, 12000);
    int slots = morning.lead().orElseThrow() / 5;
    double limit = days.model().setPoint(0) + LivedDay.TOLERANCE;
    assertThat(slots).isPositive();
    assertThat(firstHour(days, 12000, slots)).isLessThanOrEqualTo(limit);
    assertThat(firstHour(days, 12000, slots - 1)).isGreaterThan(limit);
  }

  @Test
  void aBiggerUnitIsSooner() {
    ShopDays days = days("insulated-foam-door");
    int minutes = Integer.MAX_VALUE;
    int lead = Integer.MAX_VALUE;
    double start = morning(days, 5000).start();
    for (double btuh : new double[] {5000, 8000, 12000, 18000, 24000, 36000}) {
      PullDown morning = morning(days, btuh);
      assertThat(morning.start()).as("off until then").isCloseTo(start, within(1e-9));
      assertThat(morning.minutes().orElse(Integer.MAX_VALUE)).isLessThanOrEqualTo(minutes);
      assertThat(morning.lead().orElse(Integer.MAX_VALUE)).isLessThanOrEqualTo(lead);
      minutes = morning.minutes().orElse(Integer.MAX_VALUE);
      lead = morning.lead().orElse(Integer.MAX_VALUE);
    }
    assertThat(minutes).isLessThan(30);
    assertThat(lead).isZero();
    assertThat(morning(days, 5000).lead()).isEmpty();
  }

  /** On the afternoon of a day off it is hotter than in the morning; a bigger unit is sooner. */
  @Test
  void aSoakedAfternoonTakesLonger() {
    ShopDays days = days("insulated-foam-door");
    int minutes = Integer.MAX_VALUE;
    for (double btuh : new double[] {8000, 12000, 18000, 36000}) {
      PullDown morning = morning(days, btuh);
      PullDown.Soaked soaked = morning.soaked().orElseThrow();
      assertThat(soaked.hour()).isBetween(15, 19);
      assertThat(soaked.start()).isGreaterThan(morning.start() + 2);
      assertThat(soaked.minutes().orElse(Integer.MAX_VALUE)).isLessThanOrEqualTo(minutes);
      minutes = soaked.minutes().orElse(Integer.MAX_VALUE);
    }
    assertThat(minutes).isLessThan(60);
  }

  /** Work that never ends is looked at for a day, however small the unit. */
  @Test
  void aShopNeverLeftIsAtNoTimeHeld() {
    Shop shop = MadeShops.hours(Examples.shop("insulated-foam-door"), "Mon-Sun 0:00-24:00", 3600);
    ShopDays days =
        new ShopDays(
            ShopModel.cooling(
                shop,
                DesignDays.hotDay(Climates.load().find(MadeShops.MOBILE).orElseThrow(), Level.P1),
                ShopModel.Holding.HELD));
    PullDown morning = morning(days, 1000);
    assertThat(morning.start()).isGreaterThan(days.model().setPoint(0) + LivedDay.TOLERANCE);
    assertThat(morning.minutes()).isEmpty();
  }

  @Test
  void aCoolMorningAsksNothing() {
    ShopDays cool = days("insulated-foam-door").shifted(-15);
    PullDown morning = morning(cool, 12000);
    assertThat(morning.start()).isLessThan(cool.model().setPoint(0));
    assertThat(morning.minutes()).hasValue(0);
    assertThat(morning.lead()).hasValue(0);
    assertThat(cool.model().setPoint(0)).isGreaterThan(morning.start());
    assertThat(morning(days("insulated-foam-door").shifted(-25), 12000).soaked()).isEmpty();
  }
}
