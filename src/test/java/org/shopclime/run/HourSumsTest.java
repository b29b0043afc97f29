package org.shopclime.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.balance.ShopModel;

/** Means of the hours of a day from its steps. */
class HourSumsTest {

  private static final int SIX = 6;

  private final ShopModel model = MadeShops.steady(MadeShops.box("100 m3", "1 /h", ""), 20, 0.008);
  private final DayParts parts = DayParts.of(model, Optional.empty());

  /** Half an hour at 20 °C and 6 g/kg, half an hour at 30 °C and 10: 25 °C and 8 g/kg. */
  @Test
  void stepsCountByTheirLength() {
    HourSums sums = new HourSums(model, parts.march(), 0, 1);
    for (int hour = 0; hour < 24; hour++) {
      if (hour != 7) {
        sums.add(hour, 2 * SIX, 0.005, parts.unit(), parts.driers());
      }
    }
    parts.march().start(20);
    sums.add(7, SIX, 0.006, parts.unit(), parts.driers());
    sums.addRoom(0, 7, SIX, 0.006);
    parts.march().start(30);
    for (int i = 0; i < SIX; i++) {
      sums.add(7, 1, 0.010, parts.unit(), parts.driers());
      sums.addRoom(0, 7, 1, 0.010);
    }
    assertThat(sums.meanAir(7)).isCloseTo(25, within(1e-12));
    assertThat(sums.trace().air().at(8)).isCloseTo(25, within(1e-12));
    assertThat(sums.room(0).air().at(8)).isCloseTo(25, within(1e-12));
    assertThat(sums.room(0).water().at(8)).isCloseTo(0.008, within(1e-15));
    // 25 °C and 8 g/kg: dew point 10.8 °C, 40 %, from a psychrometric chart at sea level.
    assertThat(sums.trace().dewPoint().at(8)).isCloseTo(10.8, within(0.3));
    assertThat(sums.trace().relativeHumidity().at(8)).isCloseTo(0.40, within(0.01));
    assertThat(sums.trace().running().at(8)).isZero();
    assertThat(sums.limits()).isEmpty();
  }
}
