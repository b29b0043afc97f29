package org.shopclime.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shopclime.quantity.Units;

class OvenEditTest {

  private static final double CFM = Units.CUBIC_METRES_PER_SECOND_PER_CFM;

  private static Gain.Oven oven(String when, double exhaust) {
    return new Gain.Oven(
        "Oven", Units.metresFromFeet(3), 1, 1, Span.known(1.4), 204, 6000, 20, exhaust, at(when));
  }

  private static Schedule at(String when) {
    return ScheduleText.read(when).orElseThrow();
  }

  private static Shop shop(Gain.Oven oven, Fan... fans) {
    Shop shop = Examples.shop("insulated");
    Room room = shop.rooms().get(0).withGains(List.of(oven)).withFans(List.of(fans));
    return shop.withRooms(List.of(room));
  }

  private static String when(Shop shop) {
    return ScheduleText.write(shop.rooms().get(0).gains().get(0).when());
  }

  /** The example works until 17:00. */
  @Test
  void ovenAndItsFanGoOnAfterWork() {
    String now = "Mon-Sat 13:00-14:00, 15:00-16:00";
    Fan fan = new Fan("Exhaust", FanWay.OUT, 0.1, at(now));
    Fan other = new Fan("Other", FanWay.OUT, 0.1, at("daily 9:00-10:00"));
    Shop after = OvenEdit.afterWork(shop(oven(now, 0), fan, other)).orElseThrow();
    assertThat(when(after)).isEqualTo("Mon-Sat 17:00-18:00, 19:00-20:00");
    List<Fan> fans = after.rooms().get(0).fans();
    assertThat(fans.get(0).when()).isEqualTo(after.rooms().get(0).gains().get(0).when());
    assertThat(fans.get(1)).isEqualTo(other);
    assertThat(when(OvenEdit.afterWork(shop(oven("work", 0))).orElse(shop(oven("never", 0)))))
        .isEqualTo("never");
    assertThat(OvenEdit.afterWork(shop(oven("Mon-Sat 18:00-20:00", 0)))).isEmpty();
    assertThat(OvenEdit.afterWork(shop(oven("always", 0)))).isEmpty();
  }

  /** Three feet of hood at 200 CFM each; a hood that is there never gets weaker. */
  @Test
  void hoodTakesNoLessThanNow() {
    String now = "Mon-Sat 13:00-16:00";
    Shop hooded = OvenEdit.hooded(shop(oven(now, 0)), 0.8).orElseThrow();
    Fan hood = hooded.rooms().get(0).fans().get(0);
    assertThat(hood.flow()).isCloseTo(600 * CFM, within(1e-9));
    assertThat(hood.ledToHood()).isEqualTo(0.8);
    assertThat(((Gain.Oven) hooded.rooms().get(0).gains().get(0)).exhaust()).isEqualTo(0.8);
    Fan strong = new Fan("Hood", FanWay.OUT, 900 * CFM, at(now), FanUse.OVEN_HOOD, 3600, 0);
    Fan dust = new Fan("Dust", FanWay.OUT, 400 * CFM, at(now), FanUse.DUST_COLLECTOR, 3600, 0);
    List<Fan> fans =
        OvenEdit.hooded(shop(oven(now, 0), strong, dust), 0).orElseThrow().rooms().get(0).fans();
    assertThat(fans).hasSize(2).contains(dust);
    assertThat(fans.get(1).flow()).isCloseTo(900 * CFM, within(1e-9));
    assertThat(OvenEdit.hooded(shop(oven(now, 0.9)), 0)).isEmpty();
  }

  @Test
  void fumesAreNotReturned() {
    Fan spray = new Fan("Spray", FanWay.FILTERED_RETURN, 0.2, at("work"), FanUse.SPRAY, 3600, 0);
    assertThat(ShopCheck.check(shop(oven("work", 0), spray), Stations.any()).problems())
        .filteredOn(problem -> problem.path().contains("fans"))
        .singleElement()
        .satisfies(
            problem -> {
              assertThat(problem.path()).isEqualTo("rooms[0].fans[0].way");
              assertThat(problem.toString()).contains("not returned to a room");
            });
  }
}
