package org.shopclime.bill;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.offset;

import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

/** Laws of bills over random uses. */
class TariffProperties {

  private static final int TRIES = 30;

  private static Use use(long seed, double most) {
    Random random = new Random(seed);
    double[] hours = random.doubles(YearClock.HOURS, 0, most).toArray();
    return Use.hourly(hour -> hours[hour]);
  }

  /** Tiers and periods that all have one price cost what that price costs. */
  @Property(tries = TRIES)
  void onePriceIsOnePriceHoweverItIsTold(
      @ForAll long seed, @ForAll @DoubleRange(min = 0.01, max = 1) double price) {
    Use use = use(seed, 3);
    double flat = Tariff.flat(price).cost(use, TariffTest.CLOCK).total();
    Rate tiers =
        new Rate.Tiered(
            List.of(
                new Rate.Tier(300, price, Months.ALL),
                new Rate.Tier(Double.POSITIVE_INFINITY, price, Months.ALL)));
    Rate hours =
        new Rate.TimeOfUse(
            price,
            List.of(new Rate.Period(price, Months.ALL, EnumSet.of(DayOfWeek.FRIDAY), 100, 1000)));
    assertThat(flat).isCloseTo(price * use.total(), offset(1e-9 * flat));
    for (Rate rate : List.of(tiers, hours)) {
      assertThat(new Tariff(rate, 0, 0).cost(use, TariffTest.CLOCK).total())
          .isCloseTo(flat, offset(1e-9 * flat));
    }
  }

  /** What is added in two parts costs together what it costs at once; rising tiers make it dear. */
  @Property(tries = TRIES)
  void addedPartsAddUp(@ForAll long seed) {
    Tariff rising =
        new Tariff(
            new Rate.Tiered(
                List.of(
                    new Rate.Tier(700, 0.1, Months.ALL),
                    new Rate.Tier(Double.POSITIVE_INFINITY, 0.2, Months.ALL))),
            20,
            0);
    Use base = use(seed, 2);
    Use first = use(seed + 1, 1);
    Use second = use(seed + 2, 1);
    YearClock clock = TariffTest.CLOCK;
    double both = rising.added(base, first.plus(second), clock).total();
    double parts =
        rising.added(base, first, clock).total()
            + rising.added(base.plus(first), second, clock).total();
    assertThat(parts).isCloseTo(both, offset(1e-9 * both));
    assertThat(rising.added(base, first, clock).total())
        .isGreaterThanOrEqualTo(rising.added(Use.none(), first, clock).total() - 1e-9);
  }
}
