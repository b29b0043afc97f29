package org.shopclime.run;

import org.shopclime.balance.YearWeather;
import org.shopclime.climate.MadeYear;
import org.shopclime.shop.Room;
import org.shopclime.shop.RoomCooling;
import org.shopclime.shop.RoomHeating;
import org.shopclime.shop.ScheduleText;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopParts;

/** Years of weather, and shops with plants, that year runs are tested on. */
final class MadeYears {

  private MadeYears() {}

  /** One air all year, without sun; the sky is as warm as the air where it is damp enough. */
  static YearWeather constant(double celsius, double dewPoint) {
    return YearWeather.of(
        new MadeYear()
            .dryBulb(hour -> celsius)
            .dewPoint(hour -> dewPoint)
            .cloud(hour -> 1)
            .wind(hour -> 3)
            .year());
  }

  /** Hot summers, frosty winters, warm afternoons, a sun that shines from 7 to 17, some wind. */
  static YearWeather swinging() {
    return YearWeather.of(
        new MadeYear()
            .dryBulb(
                hour ->
                    17
                        - 13 * Math.cos(2 * Math.PI * (hour - 480) / 8760.0)
                        - 6 * Math.cos(2 * Math.PI * (hour - 3) / 24.0))
            .dewPoint(hour -> 8 - 10 * Math.cos(2 * Math.PI * (hour - 480) / 8760.0))
            .wind(hour -> 3 + hour % 5)
            .sun(hour -> day(hour) ? 700 : 0, hour -> day(hour) ? 90 : 0)
            .year());
  }

  private static boolean day(int hour) {
    int of = (hour - 1) % 24;
    return of >= 7 && of < 17;
  }

  /** The shop with its first room cooled and heated so, "always" or by another schedule. */
  static Shop plants(Shop shop, RoomCooling cooling, RoomHeating heating, String when) {
    Room room = shop.rooms().get(0);
    Record changed = ShopParts.with(room, "cooling", cooling);
    changed = ShopParts.with(changed, "heating", heating);
    changed = ShopParts.with(changed, "cooledWhen", ScheduleText.read(when).orElseThrow());
    changed = ShopParts.with(changed, "heatedWhen", ScheduleText.read(when).orElseThrow());
    java.util.List<Room> rooms = new java.util.ArrayList<>(shop.rooms());
    rooms.set(0, (Room) changed);
    return shop.withRooms(rooms);
  }
}
