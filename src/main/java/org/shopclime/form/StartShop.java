package org.shopclime.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.shopclime.quantity.UnitSystem;
import org.shopclime.quantity.Units;
import org.shopclime.shop.Place;
import org.shopclime.shop.Room;
import org.shopclime.shop.Schedule;
import org.shopclime.shop.ScheduleText;
import org.shopclime.shop.ShellPreset;
import org.shopclime.shop.ShellSize;
import org.shopclime.shop.Shop;
import org.shopclime.shop.ShopEdit;
import org.shopclime.shop.ShopParts;
import org.shopclime.shop.Work;
import org.shopclime.shop.WorkPreset;

/** A new shop out of a building and a kind of work to start from. */
final class StartShop {

  /** Capacity of the unit that is offered first, W. */
  static final double USUAL_UNIT = 12000 * Units.WATTS_PER_BTUH;

  private StartShop() {}

  /** The shop with a window unit of so many watts; without one where there are none. */
  static Shop of(
      ShellPreset shell,
      ShellSize size,
      WorkPreset work,
      String station,
      OptionalDouble unit,
      UnitSystem units) {
    List<Room> rooms = new ArrayList<>(shell.rooms(size));
    rooms.set(0, rooms.get(0).withGains(work.gains()).withFans(work.fans()));
    Place place = ShopParts.create(Place.class, Map.of("station", station.strip()));
    Schedule week = ScheduleText.read("Mon-Fri 8:00-17:00").orElseThrow();
    Work hours = ShopParts.create(Work.class, Map.of("hours", week));
    Shop bare = new Shop("My shop", "", units, place, hours, rooms, Optional.empty());
    return unit.isPresent() ? ShopEdit.unitCapacity(bare, unit.getAsDouble()) : bare;
  }

  /** What is taken for granted, one line each. */
  static String assumptions(ShellPreset shell, WorkPreset work) {
    List<String> lines = new ArrayList<>(shell.assumptions());
    lines.addAll(work.assumptions());
    lines.add("A window unit, work Monday to Friday from 8 to 5, the 1 % hot day.");
    lines.add("All of this can be changed afterwards.");
    return String.join("\n", lines);
  }
}
