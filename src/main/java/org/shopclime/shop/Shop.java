package org.shopclime.shop;

import java.util.List;
import java.util.Optional;
import org.shopclime.quantity.UnitSystem;

/**
 * A shop as its owner describes it.
 *
 * @param name what the owner calls it
 * @param note anything worth keeping with it
 * @param units system the file is written in and the form opens in
 * @param place where it stands and which hot day counts
 * @param work when work goes on
 * @param rooms rooms, attic and loft included; the first is the work room
 * @param unit the cooling unit, if there is one
 */
public record Shop(
    @Say(label = "Name", help = "What you call this shop.") String name,
    @Say(label = "Note", help = "Anything worth keeping with it.", otherwise = "-") String note,
    @Say(label = "Units", help = "Inch-pound or SI.", otherwise = "inch-pound") UnitSystem units,
    @Say(label = "Place and hot day") Place place,
    @Say(label = "Working time") Work work,
    @Say(label = "Rooms") List<Room> rooms,
    @Say(label = "Cooling unit", otherwise = "none") Optional<CoolingUnit> unit) {

  /** Copies the list. */
  public Shop {
    rooms = List.copyOf(rooms);
  }
}
