package org.shopclime.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.shopclime.balance.RandomCase;
import org.shopclime.balance.ShopYear;
import org.shopclime.balance.YearWeather;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomCooling;
import org.shopclime.shop.RoomHeating;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopParts;

/** Any shop's year: finite, its books closed, no plant ever against another. */
class YearRunProperties {

  private static final YearWeather YEAR = MadeYears.swinging();

  @Property(tries = 2)
  void booksOfAnyShopClose(@ForAll long number) {
    Random random = new Random(number);
    Shop drawn = new RandomCase(number).shop();
    List<Room> rooms = new ArrayList<>();
    for (Room room : drawn.rooms()) {
      RoomCooling[] cooling = RoomCooling.values();
      Record cooled = ShopParts.with(room, "cooling", cooling[random.nextInt(cooling.length)]);
      Record heated =
          ShopParts.with(
              cooled, "heating", random.nextBoolean() ? RoomHeating.IDEAL : RoomHeating.NONE);
      // A compressor in a shut closet gets hotter than the run allows.
      rooms.add(
          room.name().equals("Closet") ? ((Room) heated).withGains(List.of()) : (Room) heated);
    }
    ShopYear year = ShopYear.of(drawn.withRooms(rooms), YEAR);
    YearRun run = new YearRun(year, Optional.of(MadeShops.window(3000)), 4, 20);
    DayLedger ledger = new DayLedger(year.rooms());
    run.warmUp();
    double before = run.waterHeld();
    run.audit(ledger);
    YearResult result = run.runYear();
    double turnover = ledger.sources + Math.abs(ledger.boundaries) + Math.abs(ledger.streams);
    double in = ledger.sources + ledger.plants + ledger.streams + ledger.boundaries;
    assertThat(in - ledger.removed).isCloseTo(ledger.stored, within(1e-9 * turnover));
    double water = ledger.waterIn + ledger.waterGiven - ledger.waterCoil - ledger.waterFallen;
    assertThat(run.waterHeld() - before)
        .isCloseTo(water, within(1e-9 * (run.waterHeld() + ledger.waterGiven)));
    for (int room = 0; room < year.rooms(); room++) {
      for (int hour = 0; hour < YearWeather.HOURS; hour++) {
        for (YearResult.Figure figure : YearResult.Figure.values()) {
          assertThat(result.at(figure, room, hour)).isFinite();
        }
        if (!year.isHeated(room)) {
          assertThat(result.at(YearResult.Figure.HEATING, room, hour)).isZero();
        }
        if (!year.coolingOn(room, hour)) {
          assertThat(result.at(YearResult.Figure.COOLING, room, hour)).isZero();
        }
      }
    }
  }
}
