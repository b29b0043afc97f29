package org.shopclime.balance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.shopclime.climate.MadeYear;
import org.shopclime.shop.Clock;
import org.shopclime.shop.Part;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomCooling;
import org.shopclime.shop.RoomHeating;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopParts;

/**
 * When plants are on through a year that begins on a Wednesday, work Mondays to Fridays 8 to 17.
 */
class PlantHoursTest {

  private static final int WEDNESDAY = 0;
  private static final int SATURDAY = 3 * 24;

  private static PlantHours plants(RoomCooling cooling, double heatedTo) {
    Room plain =
        TestShops.room(
            "Shop",
            RoomUse.COOLED,
            20,
            2.5,
            TestShops.WISHED,
            TestShops.face("Lid", Part.WALL, "outdoors", 0, 90, 8, 2.5, TestShops.concrete()));
    Record room = plain.withPlants(cooling, RoomHeating.IDEAL);
    room = ShopParts.with(room, "cooledWhen", TestShops.when("work"));
    room = ShopParts.with(room, "heatedWhen", TestShops.when("always"));
    room = ShopParts.with(room, "heatedTo", Optional.of(heatedTo));
    Shop shop =
        TestShops.shop(plain)
            .withRooms(List.of((Room) room))
            .withWork(TestShops.work("Mon-Fri 8:00-17:00", Clock.STANDARD));
    YearWeather weather = YearWeather.of(new MadeYear().at(TestShops.PLACE).year());
    return ShopYear.of(shop, weather).plants();
  }

  /** Hours are numbered from 0: the one from 8 to 9 is 8. */
  @Test
  void theyAreOnAsTheOwnerSays() {
    PlantHours plants = plants(RoomCooling.UNIT, 18);
    assertThat(plants.isCooledByUnit(0)).isTrue();
    assertThat(plants.isCooledIdeally(0)).isFalse();
    assertThat(plants.isHeated(0)).isTrue();
    assertThat(plants.coolingOn(0, WEDNESDAY + 7)).isFalse();
    assertThat(plants.coolingOn(0, WEDNESDAY + 8)).isTrue();
    assertThat(plants.coolingOn(0, WEDNESDAY + 17)).isFalse();
    assertThat(plants.coolingOn(0, SATURDAY + 8)).isFalse();
    assertThat(plants.heatingOn(0, SATURDAY + 3)).isTrue();
  }

  /** A habit changes the hours of the rooms that the unit cools, and of no others. */
  @Test
  void aHabitIsTheUnitsAlone() {
    PlantHours unit = plants(RoomCooling.UNIT, 18).under(CoolingHabit.onDemand(2));
    assertThat(unit.coolingOn(0, WEDNESDAY + 5)).isFalse();
    assertThat(unit.coolingOn(0, WEDNESDAY + 6)).isTrue();
    PlantHours ideal = plants(RoomCooling.IDEAL, 18).under(CoolingHabit.onDemand(2));
    assertThat(ideal.coolingOn(0, WEDNESDAY + 6)).isFalse();
    PlantHours back = plants(RoomCooling.UNIT, 18).under(new CoolingHabit(30, 0));
    assertThat(back.coolingOn(0, SATURDAY + 8)).isTrue();
    assertThat(back.cooledTo(0, SATURDAY + 8)).isEqualTo(30);
    assertThat(back.cooledTo(0, WEDNESDAY + 8)).isEqualTo(back.cooledTo(0));
  }

  /** A room that is cooled too is heated no higher than it is cooled to. */
  @Test
  void plantsNeverWorkAgainstEachOther() {
    PlantHours both = plants(RoomCooling.UNIT, 40);
    assertThat(both.heatedTo(0)).isEqualTo(both.cooledTo(0));
    assertThat(both.heatedTo(0, 12, 1)).isEqualTo(both.cooledTo(0));
    assertThat(plants(RoomCooling.NONE, 40).heatedTo(0)).isEqualTo(40);
  }
}
