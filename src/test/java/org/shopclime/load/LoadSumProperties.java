package org.shopclime.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.shopclime.balance.ComponentKind;
import org.shopclime.balance.Profile;
import org.shopclime.balance.RandomCase;
import org.shopclime.balance.TestShops;

/**
 * Lines and total agree, for the program's networks are linear once radiation and air flows are
 * frozen: the lines come from runs of their own, the total from one run of everything.
 */
class LoadSumProperties {

  /** Few tries: each of them runs twenty lines through some weeks. */
  @Property(tries = 8)
  void linesAddUpToTheTotalAtEveryHour(@ForAll @LongRange(min = 0, max = 100_000) long lot) {
    RandomCase any = new RandomCase(lot);
    ShopLoad load = PeakLoad.of(TestShops.sunny(any.shop(), any.day()));
    for (RoomLoad room : load.rooms()) {
      double peak = Profile.of(hour -> Math.abs(room.sensible().at(hour))).peak();
      for (int hour = 1; hour <= 24; hour++) {
        double sensible = 0;
        double latent = 0;
        for (Line line : room.lines()) {
          sensible += line.sensible().at(hour);
          latent += line.latent().at(hour);
          assertThat(line.kind()).isNotEqualTo(ComponentKind.CONTENTS);
        }
        assertThat(sensible)
            .as("%s at %d, lot %d", room.name(), hour, lot)
            .isCloseTo(room.sensible().at(hour), within(1e-9 * peak));
        assertThat(latent).isCloseTo(room.latent().at(hour), within(1e-9 * peak));
      }
    }
  }
}
