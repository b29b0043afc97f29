package org.shopclime.climate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What holds for every day however it is moved. */
class DesignDaysProperties {
  private final HotDay day = DesignDays.hotDay(MadeClimate.at(MadeYear.PLACE), Level.P1);

  @Property
  void theWetBulbNeverPassesTheDryBulb(
      @ForAll @DoubleRange(min = -40, max = 25) double move,
      @ForAll @IntRange(min = 1, max = 24) int hour) {
    HotDay moved = DesignDays.shifted(day, move);
    assertThat(moved.wetBulb().at(hour)).isLessThanOrEqualTo(moved.dryBulb().at(hour) + 1e-6);
    assertThat(moved.humidityRatio().at(hour)).isLessThanOrEqualTo(day.dayHumidityRatio());
  }

  @Property
  void twoMovesAreOne(
      @ForAll @DoubleRange(min = -30, max = 12) double one,
      @ForAll @DoubleRange(min = -10, max = 12) double other) {
    HotDay twice = DesignDays.shifted(DesignDays.shifted(day, one), other);
    HotDay once = DesignDays.shifted(day, one + other);
    for (int hour = 1; hour <= 24; hour++) {
      assertThat(twice.dryBulb().at(hour)).isCloseTo(once.dryBulb().at(hour), within(1e-9));
      assertThat(twice.wetBulb().at(hour)).isCloseTo(once.wetBulb().at(hour), within(1e-5));
    }
  }
}
