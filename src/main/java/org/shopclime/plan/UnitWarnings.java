package org.shopclime.plan;

import java.util.ArrayList;
import java.util.List;
import org.shopclime.run.LivedDay;
import org.shopclime.shop.RoomUse;
import org.shopclime.shop.Shop;
import org.shopclime.shop.Warning;

/** What should stand beside the figures of a unit's day. */
final class UnitWarnings {

  private UnitWarnings() {}

  static List<Warning> of(LivedDay lived) {
    List<Warning> warnings = new ArrayList<>();
    if (lived.beyond().contains("OUTDOOR_HIGH")) {
      warnings.add(
          new Warning(
              "unit",
              "Outdoors is hotter than the unit's published curves were tested; the capacity at"
                  + " the hottest tested point is used, the true one is less."));
    }
    if (lived.beyond().contains("WET_BULB_HIGH") || lived.beyond().contains("WET_BULB_LOW")) {
      warnings.add(
          new Warning(
              "unit",
              "Room air was for a time outside the range the unit's curves were tested in; the"
                  + " edge of that range is used."));
    }
    if (lived.beyond().contains("AIRFLOW_LOW")) {
      warnings.add(
          new Warning(
              "unit",
              "So little air passes the coil that no published curve covers it; the true capacity"
                  + " is less."));
    }
    if (lived.beyond().contains("COIL_ICES")) {
      warnings.add(
          new Warning(
              "unit",
              "The coil would fall below freezing and ice over; the longer it runs the less it"
                  + " gives."));
    }
    return warnings;
  }

  /** Cooled rooms that no unit reaches, and shops with none to cool. */
  static List<Warning> ofRooms(Shop shop, int told) {
    List<Warning> warnings = new ArrayList<>();
    boolean cooled = false;
    for (int room = 0; room < shop.rooms().size(); room++) {
      if (shop.rooms().get(room).use() == RoomUse.COOLED) {
        cooled = true;
        if (room != told && shop.unit().isPresent()) {
          warnings.add(
              new Warning(
                  "rooms[" + room + "]",
                  "The unit stands in \""
                      + shop.rooms().get(told).name()
                      + "\"; this room counts in the peak load, but on the day as lived nothing"
                      + " cools it."));
        }
      }
    }
    if (!cooled) {
      warnings.add(
          new Warning(
              "rooms",
              "No room is to be cooled: there is no load, and no size of unit is recommended."));
    }
    return warnings;
  }
}
