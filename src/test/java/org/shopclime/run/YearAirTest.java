package org.shopclime.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.balance.ShopYear;

/** Air flows of a step of a year, found for the air that they lead to. */
class YearAirTest {

  private static final int HOUR = 4000;

  /** A hot attic that cools in an hour leaks less at its mean than at its start; rounds find it. */
  @Test
  void flowsOfTheMeanAirAreFound() {
    ShopYear year =
        ShopYear.of(MadeShops.example("insulated", MadeShops.MOBILE), MadeYears.constant(20, 10));
    YearParts parts = YearParts.of(year, Optional.empty(), HOUR, 70);
    parts.look(HOUR, false);
    assertThat(parts.outdoors().inflow(1)).isEqualTo(year.inflow(1, 70, HOUR));
    assertThat(parts.air().off()).isGreaterThan(1);
    double off = Double.POSITIVE_INFINITY;
    for (int round = 0; round < 10 && off > 1; round++) {
      parts.air().takeFound();
      parts.march().look(parts.drivers());
      off = parts.air().off();
    }
    assertThat(off).isLessThanOrEqualTo(1);
    double mean = parts.march().meanAir(1);
    assertThat(Math.abs(parts.outdoors().inflow(1) / year.inflow(1, mean, HOUR) - 1))
        .isLessThan(0.01);
  }

  /** Where nothing moves, the first guess is the answer. */
  @Test
  void aGuessThatIsRightIsNotMoved() {
    ShopYear year = ShopYear.of(MadeShops.box("100 m3", "1 /h", ""), MadeYears.constant(20, 10));
    YearParts parts = YearParts.of(year, Optional.empty(), HOUR, 20);
    parts.look(HOUR, false);
    assertThat(parts.air().off()).isLessThan(1);
    double before = parts.outdoors().inflow(0);
    parts.air().takeFound();
    assertThat(parts.outdoors().inflow(0)).isEqualTo(before);
  }
}
