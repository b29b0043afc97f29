package org.shopclime.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.shopclime.run.MadeShops.btuh;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.air.MoistAir;
import org.shopclime.balance.DayKind;
import org.shopclime.balance.ShopModel;
import org.shopclime.leakage.DoorExchange;
import org.shopclime.shop.Examples;
import org.shopclime.shop.Shop;

/** A door stands open for some minutes, not a little all the time. */
class OpenDoorTest {

  private static final String OPEN = "\"openMinutes\": \"%s min\"";

  private static Shop opened(String minutes) {
    String text = Examples.text("insulated-foam-door");
    assertThat(text).contains(OPEN.formatted("2"));
    return MadeShops.read(text.replace(OPEN.formatted("2"), OPEN.formatted(minutes)));
  }

  private static DayLedger day(Shop shop) {
    ShopDays days = new ShopDays(MadeShops.model(shop));
    DayRunner runner = new DayRunner(days, Optional.of(MadeShops.window(btuh(24000))), 0);
    runner.restore(LivedDay.idle(days, 0));
    DayLedger ledger = new DayLedger(2);
    runner.audit(ledger);
    runner.run(DayKind.WORKING);
    return ledger;
  }

  /** Twelve of sixty minutes: two whole slots and two fifths of a third. */
  @Test
  void theAirLeapsWhileTheDoorIsOpen() {
    DayLedger open = day(opened("12"));
    DayLedger shut = day(opened("0"));
    int three = 14 * 12;
    for (int slot = 0; slot < 12; slot++) {
      double more = open.inflow[0][three + slot] - shut.inflow[0][three + slot];
      if (slot < 3) {
        assertThat(more).as("slot %s", slot).isGreaterThan(0.1);
        assertThat(open.air[0][three + slot])
            .as("slot %s", slot)
            .isGreaterThan(open.air[0][three - 1] + 0.3);
      } else {
        assertThat(more).as("slot %s", slot).isCloseTo(0, within(0.003));
      }
    }
    assertThat(open.air[0][three + 6]).isLessThan(open.air[0][three + 1] - 0.3);
  }

  /** The hour's mean flow is minutes over sixty of the flow while open, at held temperatures. */
  @Test
  void theMeanOfTheHourIsItsPartOfTheFlow() {
    Shop shop = opened("12");
    ShopModel model = MadeShops.model(shop);
    ShopModel without = MadeShops.model(opened("0"));
    int hour = 15;
    double celsius = model.setPoint(0);
    double sum = 0;
    for (int slot = 0; slot < 12; slot++) {
      int at = 12 * (hour - 1) + slot;
      sum +=
          model.streams().total(0, celsius, DayKind.WORKING, at, 1)
              - without.streams().total(0, celsius, DayKind.WORKING, at, 1);
    }
    double moisture = model.outdoorHumidityRatio(hour);
    double outside = MoistAir.density(model.outdoor(hour), moisture, model.pressure());
    double inside = MoistAir.density(celsius, moisture, model.pressure());
    double foot = 0.3048;
    // What leaves at the bottom is the denser indoor air; as much dry air comes in at the top.
    double flow =
        DoorExchange.flow(9 * foot, 7 * foot, outside, inside)
            * inside
            / outside
            * MoistAir.dryAirDensity(model.outdoor(hour), moisture, model.pressure());
    assertThat(inside).isGreaterThan(outside);
    assertThat(sum / 12).isCloseTo(12.0 / 60 * flow, within(1e-6));
  }

  @Test
  void moreMinutesBringMoreHeatAndWater() {
    double before = Double.NEGATIVE_INFINITY;
    double waterBefore = Double.NEGATIVE_INFINITY;
    for (String minutes : new String[] {"0", "2", "10", "30"}) {
      DayLedger day = day(opened(minutes));
      assertThat(day.streams).isGreaterThan(before);
      assertThat(day.waterIn).isGreaterThan(waterBefore);
      before = day.streams;
      waterBefore = day.waterIn;
    }
  }

  /** The air that opening the door brings in from three to four, kg/s, in room air of 78 °F. */
  private static double brought(String screen) {
    Shop open = MadeShops.read(opened("12", screen));
    Shop shut = opened("0");
    return total(MadeShops.model(open)) - total(MadeShops.model(shut));
  }

  private static double total(ShopModel model) {
    return model.streams().total(0, model.setPoint(0), DayKind.WORKING, 12 * 14, 12);
  }

  private static String opened(String minutes, String screen) {
    return Examples.text("insulated-foam-door")
        .replace(
            OPEN.formatted("2"),
            OPEN.formatted(minutes) + ", \"screen\": \"%s\"".formatted(screen));
  }

  /**
   * Strips hold back 93 parts of a hundred of what warmth moves, an air door 75; of what wind moves
   * neither is taken to hold back any, and of that is more here than of the quarter.
   */
  @Test
  void whatWarmthMovesIsHeldBackUntilWindMovesMore() {
    double bare = brought("nothing");
    assertThat(bare).isGreaterThan(0.05);
    double wind = brought("strips");
    assertThat(wind).isBetween(0.25 * bare, 0.6 * bare);
    assertThat(brought("air door")).isCloseTo(wind, within(1e-12));
    assertThat(DoorExchange.Protection.STRIP_CURTAIN.left(2)).isCloseTo(0.14, within(1e-12));
    assertThat(DoorExchange.Protection.AIR_CURTAIN.left(2)).isCloseTo(0.5, within(1e-12));
    assertThat(DoorExchange.Protection.NONE.left(2)).isEqualTo(2);
  }

  @Test
  void stripsTakeHeatAndWaterOutOfTheDay() {
    DayLedger bare = day(opened("12"));
    DayLedger strips = day(MadeShops.read(opened("12", "strips")));
    assertThat(sum(strips.inflow[0])).isLessThan(sum(bare.inflow[0]));
    assertThat(sum(strips.air[0])).isLessThan(sum(bare.air[0]));
  }

  private static double sum(double[] of) {
    return java.util.Arrays.stream(of).sum();
  }
}
