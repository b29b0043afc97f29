package org.shopclime.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AddLifecycleHook;
import org.shopclime.balance.CoolingHabit;
import org.shopclime.balance.DrawnShop;
import org.shopclime.balance.MoreTries;
import org.shopclime.balance.ShopYear;
import org.shopclime.balance.YearWeather;
import org.shopclime.balance.YearWeeks;
import org.shopclime.shop.RoomCooling;
import org.shopclime.shop.RoomHeating;
import org.shopclime.shop.Shop;

/** Weeks under a habit: books that close in any shop, and what lasts longer draws more in a box. */
@AddLifecycleHook(MoreTries.class)
class HabitProperties {

  private static final YearWeather SWINGING = MadeYears.swinging();
  private static final int BEFORE = 20;

  /** Heat and water of the 168 hours are kept, whatever the week and the habit. */
  @Property(tries = 4, shrinking = ShrinkingMode.OFF)
  void booksOfAWeekClose(@ForAll long lot) {
    DrawnShop drawn = new DrawnShop(lot);
    Shop shop =
        DrawnShop.eachRoom(
            drawn.shop(),
            room -> room.withPlants(RoomCooling.UNIT, drawn.any(List.of(RoomHeating.values()))));
    ShopYear year = ShopYear.of(shop, SWINGING).cooledBy(habit(drawn));
    int week = (int) drawn.between(0, 51);
    int from = week * YearWeeks.HOURS;
    YearRun run = new YearRun(year, Optional.of(unit(drawn)), BEFORE);
    YearResult result = null;
    try {
      result = YearBooks.closed(year, run, from, from + YearWeeks.HOURS).result();
    } catch (RoomTooHot e) {
      Assume.that(false);
    }
    for (int hour = from; hour < from + YearWeeks.HOURS; hour++) {
      if (!year.plants().coolingOn(0, hour)) {
        assertThat(result.at(YearResult.Figure.POWER, 0, hour)).isZero();
      }
    }
  }

  private static CoolingHabit habit(DrawnShop drawn) {
    int lead = (int) drawn.between(0, 4);
    return drawn.any(
        List.of(
            CoolingHabit.alwaysOn(),
            new CoolingHabit(drawn.between(24, 35), lead),
            CoolingHabit.onDemand(lead)));
  }

  /**
   * In the hottest week of a bare box, whose air is all that stores heat and water, left on takes
   * at least as much as set back and that as much as on demand: in heat taken out, as the cooler
   * room draws more in, and in kWh.
   *
   * <p>Not so in every shop: kWh may fall short where nights are cold and walls heavy, as a unit
   * that chills them at night, when it is most efficient, has less to do in the afternoon; and
   * where a room left warm and moist lets the coil work on warmer air.
   */
  @Property(tries = 5, shrinking = ShrinkingMode.OFF)
  void whatLastsLongerDrawsMore(@ForAll long lot) {
    DrawnShop drawn = new DrawnShop(lot);
    String resistance = String.format("%.2f", drawn.between(0.5, 4));
    String changes = String.format("%.2f /h", drawn.between(0.1, 2));
    Shop box =
        MadeYears.plants(
            MadeShops.box(resistance, "27 m3", changes, ""),
            RoomCooling.UNIT,
            RoomHeating.NONE,
            "work");
    ShopYear year = ShopYear.of(box, SWINGING);
    Cooling unit = unit(drawn);
    double away = drawn.between(27, 33);
    int lead = (int) drawn.between(0, 3);
    double[] heat = new double[3];
    double[] drawnPower = new double[3];
    CoolingHabit[] habits = {
      CoolingHabit.alwaysOn(), new CoolingHabit(away, lead), CoolingHabit.onDemand(lead)
    };
    for (int i = 0; i < habits.length; i++) {
      int from = YearWeeks.hottest(SWINGING);
      YearRun run = new YearRun(year.cooledBy(habits[i]), Optional.of(unit), BEFORE);
      run.warmUp(from);
      YearResult week = run.run(from, from + YearWeeks.HOURS);
      heat[i] = week.kilowattHours(YearResult.Figure.COOLING, 0);
      drawnPower[i] = week.kilowattHours(YearResult.Figure.POWER, 0);
    }
    assertThat(heat[0]).isGreaterThanOrEqualTo(heat[1]).isPositive();
    assertThat(heat[1]).isGreaterThanOrEqualTo(heat[2]);
    assertThat(drawnPower[0]).isGreaterThanOrEqualTo(drawnPower[1]);
    assertThat(drawnPower[1]).isGreaterThanOrEqualTo(drawnPower[2]);
  }

  private static Cooling unit(DrawnShop drawn) {
    return MadeShops.window(drawn.between(1500, 9000));
  }
}
